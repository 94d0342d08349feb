import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import type { FrictionInputs } from './support/frictionInputs';

/** Darcy friction factor by Swamee and Jain's explicit form, with the constant 5.74. */
export function swameeJain(inputs: FrictionInputs): FormulaResult {
  const refusal = findOutOfRange(swameeJainRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { reynolds, relativeRoughness } = inputs;
  return { ok: true, value: 0.25 / Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2 };
}

const library = 'fluids library, tests of friction factors; its (6.97/Re)^0.9 is 5.74/Re^0.9 rounded';
const manual = 'Lindeburg, Civil Engineering Reference Manual, 12th ed., example 17.2';

export const swameeJainRecord: FormulaRecord<FrictionInputs> = {
  id: 'friction-swamee-jain',
  title: 'Friction factor by Swamee and Jain',
  formula: 'f = 0.25 / [ log₁₀( (ε/D)/3.7 + 5.74/Re^0.9 ) ]²',
  inputs: {
    reynolds: { text: 'Reynolds number', unit: 'ratio', min: 5000, max: 1e8 },
    relativeRoughness: { text: 'Roughness over diameter', unit: 'ratio', min: 1e-6, max: 0.05 },
  },
  result: { text: 'Darcy friction factor', unit: 'ratio', min: 0.005, max: 0.08 },
  source: [
    { text: 'Swamee and Jain 1976, range as in the fluids library, friction.py', documents: ['fluids-library'], confidence: 'read' },
  ],
  examples: [
    {
      kind: 'source',
      from: library,
      inputs: { reynolds: 1e5, relativeRoughness: 1e-4 },
      result: 0.018452424431901808,
      tolerance: 4e-8,
    },
    { kind: 'source', from: manual, inputs: { reynolds: 4e5, relativeRoughness: 0.004 }, result: 0.0288, tolerance: 1e-4 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 180, formulas: [formula(swameeJainRecord, swameeJain)] }];
