import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';

export interface BlasiusInputs {
  reynolds: number;
}

/** Darcy friction factor of turbulent flow in a smooth duct by Blasius. */
export function blasius(inputs: BlasiusInputs): Outcome {
  const reason = findOutOfRange(blasiusRecord, inputs);
  return reason === null ? { ok: true, value: 0.3164 / inputs.reynolds ** 0.25 } : { ok: false, reason };
}

const library = 'fluids library, tests of friction factors (A-F8)';

export const blasiusRecord: FormulaRecord<BlasiusInputs> = {
  id: 'friction-blasius',
  title: 'Friction factor by Blasius',
  formula: 'f = 0.3164 / Re^0.25',
  inputs: { reynolds: { text: 'Reynolds number', unit: 'ratio', min: 4000, max: 1e5 } },
  result: { text: 'Darcy friction factor', unit: 'ratio', min: 0.017, max: 0.04 },
  source: [
    { text: library, confidence: 'read' },
    { text: 'Range 4000 ≤ Re ≤ 10⁵: the usual textbook one', confidence: 'memory' },
  ],
  examples: [{ kind: 'source', from: library, inputs: { reynolds: 1e4 }, result: 0.03164, tolerance: 1e-8 }],
};
