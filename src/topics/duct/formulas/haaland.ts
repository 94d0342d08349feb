import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import type { FrictionInputs } from './support/frictionInputs';

/** Darcy friction factor by Haaland's explicit form: within about 2 % of Colebrook. */
export function haaland(inputs: FrictionInputs): FormulaResult {
  const refusal = findOutOfRange(haalandRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { reynolds, relativeRoughness } = inputs;
  return { ok: true, value: (-1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** -2 };
}

const library = 'fluids library, tests of friction factors';

export const haalandRecord: FormulaRecord<FrictionInputs> = {
  id: 'friction-haaland',
  title: 'Friction factor by Haaland',
  formula: 'f = [ −1.8 log₁₀( ((ε/D)/3.7)^1.11 + 6.9/Re ) ]^−2',
  inputs: {
    reynolds: { text: 'Reynolds number', unit: 'ratio', min: 4000, max: 1e8 },
    relativeRoughness: { text: 'Roughness over diameter', unit: 'ratio', min: 0, max: 0.05 },
  },
  result: { text: 'Darcy friction factor', unit: 'ratio', min: 0.005, max: 0.08 },
  source: [{ text: 'Haaland, as in the fluids library, friction.py: 4000 ≤ Re ≤ 10⁸', documents: ['fluids-library'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: library,
      inputs: { reynolds: 1e5, relativeRoughness: 1e-4 },
      result: 0.018265053014793857,
      tolerance: 1e-11,
    },
    { kind: 'regression', from: '', inputs: { reynolds: 4e5, relativeRoughness: 0.004 }, result: 0.028724, tolerance: 5e-7 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 170, formulas: [formula(haalandRecord, haaland)] }];
