import { type DemandMessages, type HoldingMessages } from '../../rules';
import { refusalWords } from '../quantities/refusalWords';
import type { Wording } from '../wording';

/** What every rule may say of a figure that is not known, and what the inputs are called that several topics ask for. */
export const rules: Wording<HoldingMessages & DemandMessages> = {
  'rule/to-know': ({ what, ask }, _f, tell) => `To know ${tell(what)}, say the ${tell(ask)}.`,
  'rule/to-hold-against': ({ what, ask }, _f, tell) => `To hold it against ${tell(what)}, say the ${tell(ask)}.`,
  'rule/not-worked-out': ({ what, refusal }, f, tell) =>
    `Can’t work out ${tell(what)}: ${refusal === null ? 'an input is missing' : refusalWords(refusal, f)}.`,
  'ask/meals-per-day': () => 'meals a day',
  'ask/peak-meals': () => 'meals in the peak',
  'ask/peak-minutes': () => 'length of the peak',
  'ask/pieces-per-meal': () => 'pieces of ware a meal',
  'ask/pieces-per-rack': () => 'pieces a rack',
  'ask/hours-per-day': () => 'hours a day that the machine is on',
  'ask/days-per-year': () => 'days a year that the machine is on',
  'ask/rest-minutes': () => 'lighter work after the peak',
  'ask/scrap-seconds': () => 'time that scrapping and pre-rinsing one rack takes',
  'ask/rack-mass': () => 'mass of a loaded rack',
};
