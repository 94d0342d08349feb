import type { FormulaSource } from '../../engineering';
import type { How } from '../types';

/** How a length was measured on the plan itself, and the documents that it is held against. */
export const measured = (formula: string, ...against: readonly FormulaSource[]): How => ({
  formula,
  inputs: [],
  source: [{ text: 'Measured on the plan', confidence: 'geometry' }, ...against],
});
