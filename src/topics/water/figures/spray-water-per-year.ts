import { type FigureReading, type FigureRule, needDemand } from '../../../rules';
import type { Scene } from '../../../scene';
import { sprayReadings, spraysOf } from './support/sprayUse';

export const rule: FigureRule = {
  id: 'spray-water-per-year',
  order: 180,
  title: 'Water of the pre-rinse spray in a year, at most',
  group: 'water',
  unit: 'm3',
  derive: (scene) => spraysOf(scene.plan).flatMap(({ table, fitting }) => deriveReadings(scene, [fitting.id, table.id])),
};

/** Beside the water of the machine, not in it: how long the spray stands open nobody has measured. */
function deriveReadings({ plan }: Scene, subjects: string[]): FigureReading[] {
  const demand = needDemand(plan, subjects, 'daysPerYear');
  return 'ask' in demand ? [demand.ask] : sprayReadings(subjects, demand.known.daysPerYear);
}
