import type { Plan } from '../../plan';
import type { FigureReading } from '../figure';
import { createMessages, type Message, type NoParams } from '../message';
import { askFor } from './readings';

type Demand = Plan['demand'];
type Field = keyof Demand;

/** What the fields of the demand are called. */
export interface DemandMessages {
  'ask/meals-per-day': NoParams;
  'ask/peak-meals': NoParams;
  'ask/peak-minutes': NoParams;
  'ask/pieces-per-meal': NoParams;
  'ask/pieces-per-rack': NoParams;
  'ask/hours-per-day': NoParams;
  'ask/days-per-year': NoParams;
  'ask/rest-minutes': NoParams;
  'ask/scrap-seconds': NoParams;
  'ask/rack-mass': NoParams;
}

const message = createMessages<DemandMessages>();

const INPUTS: Readonly<Record<Field, Message>> = {
  mealsPerDay: message('ask/meals-per-day'),
  peakMeals: message('ask/peak-meals'),
  peakMinutes: message('ask/peak-minutes'),
  piecesPerMeal: message('ask/pieces-per-meal'),
  piecesPerRack: message('ask/pieces-per-rack'),
  hoursPerDay: message('ask/hours-per-day'),
  daysPerYear: message('ask/days-per-year'),
  restMinutes: message('ask/rest-minutes'),
  scrapSeconds: message('ask/scrap-seconds'),
  rackMass: message('ask/rack-mass'),
};

type Known<F extends Field> = { [K in F]: number };

/** The fields of the demand when all are known, else the reading that asks for the first that is not. */
export function needDemand<F extends Field>(
  { demand }: Plan,
  subjects: string[],
  ...fields: F[]
): { known: Known<F> } | { ask: FigureReading } {
  const missing = fields.find((field) => demand[field] === null);
  if (missing !== undefined) return { ask: askFor(subjects, INPUTS[missing], ['demand', missing]) };
  return { known: demand as Known<F> };
}
