import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import type { FrictionInputs } from './support/frictionInputs';

/** Darcy friction factor by Churchill's one form for laminar, transitional and turbulent flow (1977). */
export function churchill(inputs: FrictionInputs): FormulaResult {
  const refusal = findOutOfRange(churchillRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { reynolds, relativeRoughness } = inputs;
  const rough = (2.457 * Math.log((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness)) ** 16;
  const smooth = (37_530 / reynolds) ** 16;
  return { ok: true, value: 8 * ((8 / reynolds) ** 12 + (rough + smooth) ** -1.5) ** (1 / 12) };
}

const library = 'fluids library, tests of friction factors';

export const churchillRecord: FormulaRecord<FrictionInputs> = {
  id: 'friction-churchill',
  title: 'Friction factor by Churchill',
  formula: 'f = 8 [ (8/Re)¹² + (A + B)^−1.5 ]^(1/12); A = {2.457 ln[ (7/Re)^0.9 + 0.27 ε/D ]}¹⁶; B = (37530/Re)¹⁶',
  inputs: {
    reynolds: { text: 'Reynolds number', unit: 'ratio', min: 1, max: 1e8 },
    relativeRoughness: { text: 'Roughness over diameter', unit: 'ratio', min: 0, max: 0.05 },
  },
  result: { text: 'Darcy friction factor', unit: 'ratio', min: 0.005, max: 65 },
  source: [
    { text: 'Churchill 1977, as in the fluids library, friction.py; it names no range', documents: ['fluids-library'], confidence: 'read' },
  ],
  examples: [
    {
      kind: 'source',
      from: library,
      inputs: { reynolds: 1e5, relativeRoughness: 1e-4 },
      result: 0.018462624566280075,
      tolerance: 1e-11,
    },
    {
      kind: 'regression',
      from: 'laminar, where it is 64/Re',
      inputs: { reynolds: 128, relativeRoughness: 0 },
      result: 0.5,
      tolerance: 1e-6,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 200, formulas: [formula(churchillRecord, churchill)] }];
