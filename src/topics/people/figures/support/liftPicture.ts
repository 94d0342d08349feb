import type { Scene } from '../../../../scene';
import { type LiftInputs, type LiftingMultipliers, liftingLimit, liftingLoad, liftingMultipliers } from '../../formulas/liftingLimit';
import { liftsOf, type RackLift } from './rackLift';

/** What a picture of one lift shows: what each multiplier leaves of the load at best, and what may be lifted in the end. */
export interface LiftPicture {
  /** Of all lifts of the machine's line this one alone. */
  id: string;
  part: RackLift['ends'][number]['part'];
  /** Hands above the floor in mm. */
  height: number;
  /** What may be lifted where every multiplier is 1, in kg. */
  loadKg: number;
  /** By the order of the equation, each 0 to 1. */
  bars: LiftBar[];
  limitKg: number;
}

export interface LiftBar {
  name: keyof LiftingMultipliers;
  value: number;
  /** None leaves less. */
  costsMost: boolean;
}

/** The lifts from a machine's line, by the order of its figures; none where an input is missing or the equation does not hold. */
export function deriveLiftPictures(scene: Scene, machineId: string): LiftPicture[] {
  const line = scene.lines.find(({ machine }) => machine.machine.id === machineId);
  if (line === undefined) return [];
  return liftsOf(scene, line).flatMap((lift) =>
    'reading' in lift
      ? []
      : lift.ends.flatMap(({ part, inputs }) => createPicture({ id: [part, ...lift.subjects].join(' '), part }, inputs)),
  );
}

function createPicture(lift: Pick<LiftPicture, 'id' | 'part'>, inputs: LiftInputs): LiftPicture[] {
  const limit = liftingLimit(inputs);
  if (!limit.ok) return [];
  const all = liftingMultipliers(inputs);
  const least = Math.min(...Object.values(all));
  const bars = NAMES.map((name) => ({ name, value: all[name], costsMost: all[name] === least && least < 1 }));
  return [{ ...lift, height: inputs.verticalM * 1000, loadKg: liftingLoad(inputs.form), bars, limitKg: limit.value }];
}

const NAMES = ['horizontal', 'vertical', 'distance', 'asymmetry', 'frequency', 'coupling'] as const;
