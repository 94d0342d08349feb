import { type Entries, type FormulaSource, forReference, type Limit, limit } from '../../../rules';
import { toSI } from '../../../units';

const manual: FormulaSource = {
  text: 'CDC Vessel Sanitation Program Operations Manual 2010, 7.5.2',
  documents: ['cdc-vessel-sanitation'],
  confidence: 'read',
};

/** How exact the instruments of a machine must be, for the start-up record. */
export const INSTRUMENT_LIMITS: readonly Limit[] = [
  limit('thermometer-error', 'Error of a thermometer', 'K', { min: -toSI(3, 'deltaF'), max: toSI(3, 'deltaF') }, manual),
  limit('thermometer-step', 'Graduation of a thermometer on the machine', 'K', { max: toSI(2, 'deltaF') }, manual),
  limit('gauge-error', 'Error of the rinse gauge from 15 to 25 psi', 'Pa', { min: -toSI(2, 'psi'), max: toSI(2, 'psi') }, manual),
  limit('gauge-step', 'Graduation of the rinse gauge', 'Pa', { max: toSI(1, 'psi') }, manual),
].map(forReference);

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 470, limits: [...INSTRUMENT_LIMITS] }];
