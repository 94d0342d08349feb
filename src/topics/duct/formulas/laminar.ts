import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface LaminarInputs {
  reynolds: number;
}

/** Darcy friction factor of laminar flow in a round duct. Roughness does not matter there. */
export function laminar(inputs: LaminarInputs): FormulaResult {
  const refusal = findOutOfRange(laminarRecord, inputs);
  return refusal === null ? { ok: true, value: 64 / inputs.reynolds } : { ok: false, refusal };
}

/** Above, flow may turn: no laminar figure is given. */
export const LAMINAR_LIMIT = 2300;

const library = 'fluids library, tests of friction factors';

export const laminarRecord: FormulaRecord<LaminarInputs> = {
  id: 'friction-laminar',
  title: 'Friction factor of laminar flow',
  formula: 'f = 64/Re',
  inputs: { reynolds: { text: 'Reynolds number', unit: 'ratio', min: 1, max: LAMINAR_LIMIT } },
  result: { text: 'Darcy friction factor', unit: 'ratio', min: 0.027, max: 64 },
  source: [
    { text: library, documents: ['fluids-library'], confidence: 'read' },
    { text: 'Limit of 2300: the usual textbook value', documents: ['fluids-library'], confidence: 'memory' },
  ],
  examples: [{ kind: 'source', from: library, inputs: { reynolds: 128 }, result: 0.5, tolerance: 0 }],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 210, formulas: [formula(laminarRecord, laminar)] }];
