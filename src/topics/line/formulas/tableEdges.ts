import { type Entries, type FormulaSource, inches, type Limit, limit, type SourceKey } from '../../../rules';

const read = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'read' });

const fromMemory = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'memory' });

/** Printed as 20½ in (520 mm): either is meant. Its guides are 20 in apart, as is the rack. */
export const RACK_SLIDE: Limit = limit(
  'rack-slide',
  'Rack slide over a pre-rinse sink, for racks of 20 in',
  'm',
  { min: 0.52 },
  read('UFGS 11400A 2.4.2.2', 'ufgs-11400'),
);

export const RACK_CLEARANCE: Limit = limit(
  'rack-clearance',
  'Between the rims of a table, for racks of 20 in',
  'm',
  { min: inches(20.25) },
  fromMemory('Trade convention, 20¼ to 20½ in', 'common-practice'),
);

/** Printed as ⅝ in (15 mm): either is meant. */
export const COVE_RADIUS: Limit = limit(
  'cove-radius',
  'Cove between deck and backsplash',
  'm',
  { min: 0.015 },
  read('UFGS 11400N 2.4.2.4', 'ufgs-11400'),
);

export const RIM_ROLL: Limit = limit(
  'rim-roll',
  'Width of a rolled rim',
  'm',
  { min: inches(1.75) },
  read('UFGS 11400N 2.4.2.4', 'ufgs-11400'),
);

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 850, group: 'air', limits: [RACK_SLIDE, RACK_CLEARANCE, COVE_RADIUS, RIM_ROLL] }];
