import { type Entries, type FormulaSource, inches, type Limit, limit, type SourceKey } from '../../../rules';

const read = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'read' });

export const AISLE_WIDTH: Limit = limit(
  'aisle-width',
  'Aisle between equipment',
  'm',
  { min: inches(36) },
  read('FDA/CFP Food Establishment Plan Review Guide 2000, III Part 6', 'fda-plan-review-guide'),
);

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 730, group: 'people', limits: [AISLE_WIDTH] }];
