import { type Formula, formula } from '../../formula';
import { bellmouthEntry, bellmouthEntryRecord } from './bellmouthEntry';
import { convergingTee, convergingTeeRecord } from './convergingTee';
import { divergingTee, divergingTeeRecord } from './divergingTee';
import { ductEntry, ductEntryRecord } from './ductEntry';
import { mitredBend, mitredBendRecord } from './mitredBend';
import { rectangularBend, rectangularBendRecord } from './rectangularBend';
import { rectangularMitre, rectangularMitreRecord } from './rectangularMitre';
import { roundedBend, roundedBendRecord } from './roundedBend';
import { segmentedBend, segmentedBendRecord } from './segmentedBend';
import { wallEntry, wallEntryRecord } from './wallEntry';
import { capByHeight, capByHeightRecord, weatherCap, weatherCapRecord } from './weatherCap';

export { bellmouthEntry } from './bellmouthEntry';
export { convergingTee, type TeeInputs } from './convergingTee';
export { divergingTee } from './divergingTee';
export { DUCT_ENTRIES, DUCT_ENTRY_KINDS, type DuctEntryKind, ductEntry } from './ductEntry';
export { mitredBend } from './mitredBend';
export { rectangularBend } from './rectangularBend';
export { rectangularMitre } from './rectangularMitre';
export { type RoundedBendInputs, roundedBend } from './roundedBend';
export { segmentedBend } from './segmentedBend';
export { wallEntry } from './wallEntry';
export { capByHeight, DUCT_EXIT_COEFFICIENT, WEATHER_CAP_KINDS, type WeatherCapKind, weatherCap } from './weatherCap';

/** What turns, joins and ends cost a duct. */
export const FITTING_FORMULAS: readonly Formula[] = [
  formula(roundedBendRecord, roundedBend),
  formula(segmentedBendRecord, segmentedBend),
  formula(mitredBendRecord, mitredBend),
  formula(rectangularBendRecord, rectangularBend),
  formula(rectangularMitreRecord, rectangularMitre),
  formula(ductEntryRecord, ductEntry),
  formula(wallEntryRecord, wallEntry),
  formula(bellmouthEntryRecord, bellmouthEntry),
  formula(weatherCapRecord, weatherCap),
  formula(capByHeightRecord, capByHeight),
  formula(convergingTeeRecord, convergingTee),
  formula(divergingTeeRecord, divergingTee),
];
