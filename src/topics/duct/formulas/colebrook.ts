import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import type { FrictionInputs } from './support/frictionInputs';

/** Darcy friction factor of turbulent flow by Colebrook and White, iterated to a part in 10¹². The yardstick of the explicit forms. */
export function colebrook(inputs: FrictionInputs): FormulaResult {
  const refusal = findOutOfRange(colebrookRecord, inputs);
  return refusal === null ? { ok: true, value: solveRoot(inputs) ** -2 } : { ok: false, refusal };
}

const CLOSE = 1e-12;
/** Newton's steps double the right digits: four are common, and no input of the range takes ten. */
const MOST_STEPS = 50;

/** x = 1/√f where x + 2 log₁₀(a + b x) = 0. */
function solveRoot({ reynolds, relativeRoughness }: FrictionInputs): number {
  const a = relativeRoughness / 3.7;
  const b = 2.51 / reynolds;
  let x = 8;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const inside = a + b * x;
    const change = (x + 2 * Math.log10(inside)) / (1 + (2 * b) / (Math.LN10 * inside));
    x -= change;
    if (Math.abs(change) <= CLOSE * x) break;
  }
  return x;
}

const library = 'fluids library, tests of friction factors';
const manual = 'Lindeburg, Civil Engineering Reference Manual, 12th ed., example 17.2';

export const colebrookRecord: FormulaRecord<FrictionInputs> = {
  id: 'friction-colebrook',
  title: 'Friction factor by Colebrook',
  formula: '1/√f = −2 log₁₀( (ε/D)/3.7 + 2.51/(Re √f) )',
  inputs: {
    reynolds: { text: 'Reynolds number', unit: 'ratio', min: 4000, max: 1e8 },
    relativeRoughness: { text: 'Roughness over diameter', unit: 'ratio', min: 0, max: 0.05 },
  },
  result: { text: 'Darcy friction factor', unit: 'ratio', min: 0.005, max: 0.08 },
  source: [{ text: 'Colebrook–White equation, as in the fluids library, friction.py', documents: ['fluids-library'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: library,
      inputs: { reynolds: 1e5, relativeRoughness: 1e-4 },
      result: 0.018513866077471,
      tolerance: 1e-11,
    },
    { kind: 'source', from: manual, inputs: { reynolds: 4e5, relativeRoughness: 0.004 }, result: 0.0287, tolerance: 1e-4 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 160, formulas: [formula(colebrookRecord, colebrook)] }];
