import type { Plan } from '../../plan';
import type { FigureReading } from '../figure';
import { askFor } from './readings';

type Demand = Plan['demand'];
type Field = keyof Demand;

/** What people call each of them. */
const WORDS: Readonly<Record<Field, string>> = {
  mealsPerDay: 'meals a day',
  peakMeals: 'meals in the peak',
  peakMinutes: 'length of the peak',
  piecesPerMeal: 'pieces of ware a meal',
  piecesPerRack: 'pieces a rack',
  hoursPerDay: 'hours a day that the machine is on',
  daysPerYear: 'days a year that the machine is on',
  restMinutes: 'lighter work after the peak',
  scrapSeconds: 'time that scrapping and pre-rinsing one rack takes',
  rackMass: 'mass of a loaded rack',
};

type Known<F extends Field> = { [K in F]: number };

/** The fields of the demand when all are known, else the reading that asks for the first that is not. */
export function needDemand<F extends Field>(
  { demand }: Plan,
  subjects: string[],
  ...fields: F[]
): { known: Known<F> } | { ask: FigureReading } {
  const missing = fields.find((field) => demand[field] === null);
  if (missing !== undefined) return { ask: askFor(subjects, WORDS[missing], ['demand', missing]) };
  return { known: demand as Known<F> };
}
