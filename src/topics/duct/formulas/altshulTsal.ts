import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import type { FrictionInputs } from './support/frictionInputs';

/** Darcy friction factor by Altshul and Tsal, the explicit form of the older duct handbooks. Coarse: in very rough flow up to 30 % below Colebrook. */
export function altshulTsal(inputs: FrictionInputs): FormulaResult {
  const refusal = findOutOfRange(altshulTsalRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const first = 0.11 * (68 / inputs.reynolds + inputs.relativeRoughness) ** 0.25;
  return { ok: true, value: first < 0.018 ? 0.85 * first + 0.0028 : first };
}

const library = 'fluids library, tests of friction factors';

export const altshulTsalRecord: FormulaRecord<FrictionInputs> = {
  id: 'friction-altshul-tsal',
  title: 'Friction factor by Altshul and Tsal',
  formula: 'f′ = 0.11 (68/Re + ε/D)^0.25; below 0.018 f = 0.85 f′ + 0.0028, else f = f′',
  inputs: {
    reynolds: { text: 'Reynolds number', unit: 'ratio', min: 4000, max: 1e8 },
    relativeRoughness: { text: 'Roughness over diameter', unit: 'ratio', min: 0, max: 0.05 },
  },
  result: { text: 'Darcy friction factor', unit: 'ratio', min: 0.005, max: 0.08 },
  source: [
    { text: 'Altshul and Tsal, as in the fluids library, friction.py', documents: ['fluids-library'], confidence: 'read' },
    {
      text: 'Turbulent range 4000 ≤ Re ≤ 10⁸ taken as for the other forms: the source names none',
      documents: ['fluids-library'],
      confidence: 'memory',
    },
  ],
  examples: [
    {
      kind: 'source',
      from: library,
      inputs: { reynolds: 1e5, relativeRoughness: 1e-4 },
      result: 0.018382997825686878,
      tolerance: 1e-11,
    },
    {
      kind: 'source',
      from: `${library}, the branch below 0.018`,
      inputs: { reynolds: 1e8, relativeRoughness: 1e-4 },
      result: 0.012165854627780102,
      tolerance: 1e-11,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 190, formulas: [formula(altshulTsalRecord, altshulTsal)] }];
