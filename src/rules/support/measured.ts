import type { Derivation } from '../figure';
import type { FormulaSource } from '../record';

/** How a length was measured on the plan itself, and the documents that it is held against. */
export const measured = (formula: string, ...against: readonly FormulaSource[]): Derivation => ({
  formula,
  inputs: [],
  source: [{ text: 'Measured on the plan', documents: ['arithmetic'], confidence: 'geometry' }, ...against],
});
