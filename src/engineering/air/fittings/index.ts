import { type Formula, formula } from '../../formula';
import { mitredBend, mitredBendRecord } from './mitredBend';
import { rectangularBend, rectangularBendRecord } from './rectangularBend';
import { rectangularMitre, rectangularMitreRecord } from './rectangularMitre';
import { roundedBend, roundedBendRecord } from './roundedBend';
import { segmentedBend, segmentedBendRecord } from './segmentedBend';
import { weatherCap, weatherCapRecord } from './weatherCap';

export { DUCT_ENTRIES } from './ductEntry';
export { mitredBend } from './mitredBend';
export { rectangularBend } from './rectangularBend';
export { rectangularMitre } from './rectangularMitre';
export { type RoundedBendInputs, roundedBend } from './roundedBend';
export { segmentedBend, segmentedBendRecord } from './segmentedBend';
export { DUCT_EXIT_COEFFICIENT, WEATHER_CAP_KINDS, type WeatherCapKind, weatherCap } from './weatherCap';

/** What turns, joins and ends cost a duct. */
export const FITTING_FORMULAS: readonly Formula[] = [
  formula(roundedBendRecord, roundedBend),
  formula(segmentedBendRecord, segmentedBend),
  formula(mitredBendRecord, mitredBend),
  formula(rectangularBendRecord, rectangularBend),
  formula(rectangularMitreRecord, rectangularMitre),
  formula(weatherCapRecord, weatherCap),
];
