import type { DataSheet } from '../../src/catalog';
import type { FloorDrain, Machine, Plan } from '../../src/plan';
import { linePlan, ownDataSheet } from './linePlan';

/** A whole line whose machine is hooked up otherwise. */
export const hookedPlan = (change: Partial<Machine['hookUp']>, others: (plan: Plan) => void = () => {}): Plan =>
  linePlan({}, (plan) => {
    hookUp(plan, change);
    others(plan);
  });

/** The same with a data sheet of one's own. */
export const hookedSheetPlan = (sheet: Partial<DataSheet>, change: Partial<Machine['hookUp']> = {}): Plan =>
  linePlan({ family: ownDataSheet(sheet) }, (plan) => hookUp(plan, change));

export function hookUp(plan: Plan, change: Partial<Machine['hookUp']>): void {
  for (const machine of plan.machines) Object.assign(machine.hookUp, change);
}

/** Changes the floor sink of the line, and what is known of its waste. */
export function floorSink(plan: Plan, waste: Partial<FloorDrain['waste']>, change: Partial<Omit<FloorDrain, 'waste'>> = {}): void {
  const [drain] = plan.room.floorDrains;
  if (drain === undefined) throw new Error('the room has no floor drain');
  Object.assign(drain, change);
  Object.assign(drain.waste, waste);
}
