import { type Entries, type FormulaSource, feet, inches, type Limit, limit, type SourceKey } from '../../../rules';

const read = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'read' });

export const CEILING_MILITARY: Limit = limit(
  'ceiling-military',
  'Ceiling of a military kitchen',
  'm',
  { min: feet(9) },
  read('UFC 4-750-01NF (16 Apr 2004), 6-2.3.1', 'ufc-4-750-01nf'),
);

export const CLEAN_WARE_HEIGHT: Limit = limit(
  'clean-ware-height',
  'Clean ware above the floor',
  'm',
  { min: inches(6) },
  read('Sonoma County CA guidelines: lowest shelf 6 in', 'sonoma-county'),
  {
    text: 'FDA Food Code 4-903.11(A)(3)',
    documents: ['fda-food-code'],
    confidence: 'memory',
  },
);

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 710, group: 'people', limits: [CEILING_MILITARY, CLEAN_WARE_HEIGHT] }];
