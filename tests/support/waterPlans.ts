import type { DataSheet } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import { MM_PER_INCH, toSI } from '../../src/units';
import { sheetPlan } from './figurePlans';

/** Inlet of the recirculating family, in its frame: see its data sheet. */
const INLET = { x: 627, y: 30, z: 320 };

/** The hot-water stub so far to the right, down the paper and above the inlet of an unturned machine. */
export function placeStub(plan: Plan, dx: number, dy: number, dz: number): void {
  const [machine] = plan.machines;
  if (machine === undefined) throw new Error('the plan has no machine');
  for (const stub of plan.room.stubs.filter(({ kind }) => kind === 'hot-water')) {
    Object.assign(stub, { x: machine.x - 737 / 2 + INLET.x + dx, y: machine.y - 711 / 2 + INLET.y + dy, z: INLET.z + dz });
  }
}

/** A rinse of 5 s in which so many gallons a minute flow. */
export const flowOf = (gpm: number): Partial<DataSheet> => ({
  rinseWaterL: 5000 * toSI(gpm, 'gpm'),
  cycle: { washS: 50, rinseS: 5, dwellS: 0, loadS: 5 },
});

/** 200 gpm through 30 ft of new steel pipe of 3.048 in, 20 ft of it on the level and 10 ft up: the printed example. */
export const printedLine = (change: (plan: Plan) => void = () => {}): Plan =>
  sheetPlan(flowOf(200), (plan) => {
    placeStub(plan, 10 * 304.8, -10 * 304.8, -10 * 304.8);
    Object.assign(plan.pipes, { bore: 3.048 * MM_PER_INCH, material: 'new-steel' });
    change(plan);
  });
