import type { FigureRule } from '../../../rules';
import { sprayReadings, spraysOf } from './support/sprayUse';

export const rule: FigureRule = {
  id: 'spray-water-per-day',
  order: 170,
  title: 'Water of the pre-rinse spray in a day, at most',
  group: 'water',
  unit: 'm3',
  derive: ({ plan }) => spraysOf(plan).flatMap(({ table, fitting }) => sprayReadings([fitting.id, table.id], 1)),
};
