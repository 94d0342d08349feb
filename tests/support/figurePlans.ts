import type { DataSheet } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import { linePlan, ownDataSheet } from './linePlan';

/** A cycle of so many seconds, changing racks apart. */
export const cycleOf = (washS: number, loadS: number): DataSheet['cycle'] => ({ washS, rinseS: 0, dwellS: 0, loadS });

/** A cycle that no machine makes: under the least of 10 s. */
export const NO_CYCLE = cycleOf(0, 5);

/** A whole line, straight through, with a data sheet of its own. */
export const sheetPlan = (sheet: Partial<DataSheet>, change: (plan: Plan) => void = () => {}): Plan =>
  linePlan({ family: ownDataSheet(sheet), configuration: 'straight' }, change);

/** One electrical version, its current as the data sheet would state it. */
export const versionOf = (powerKw: number, voltage: number, phase: 1 | 3, currentA: number): DataSheet['electrical'] => [
  { id: 'only', voltage, phase, powerKw, currentA },
];

/** 120 guests an hour, 6 pieces each, 20 in a rack. */
export const DEMAND: Plan['demand'] = {
  mealsPerDay: 400,
  peakMeals: 120,
  peakMinutes: 60,
  piecesPerMeal: 6,
  piecesPerRack: 20,
  hoursPerDay: null,
  daysPerYear: null,
  rackMass: null,
  restMinutes: null,
  scrapSeconds: null,
};
