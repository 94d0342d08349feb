import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface FrictionLossInputs {
  frictionFactor: number;
  lengthM: number;
  diameterM: number;
  densityKgM3: number;
  velocityMs: number;
}

/** Pressure in Pa that a straight stretch of duct takes by friction (Darcy and Weisbach). */
export function frictionLoss(inputs: FrictionLossInputs): FormulaResult {
  const refusal = findOutOfRange(frictionLossRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { frictionFactor, lengthM, diameterM, densityKgM3, velocityMs } = inputs;
  return { ok: true, value: ((frictionFactor * lengthM) / diameterM) * ((densityKgM3 * velocityMs ** 2) / 2) };
}

const problem = 'fluids library, one-phase pressure drop';
const velocityMs = 10 / 1000 / ((Math.PI / 4) * 0.1 ** 2);

export const frictionLossRecord: FormulaRecord<FrictionLossInputs> = {
  id: 'duct-friction-loss',
  title: 'Friction loss of a straight duct',
  formula: 'Δp = f (L/D) ρ V² / 2',
  inputs: {
    frictionFactor: { text: 'Darcy friction factor', unit: 'ratio', min: 0, max: 65 },
    lengthM: { text: 'Length', unit: 'm', min: 0, max: 50_000 },
    diameterM: { text: 'Diameter, or the hydraulic one', unit: 'm', min: 0.01, max: 10 },
    densityKgM3: { text: 'Density', unit: 'kg/m3', min: 0.1, max: 2000 },
    velocityMs: { text: 'Velocity', unit: 'm/s', min: 0, max: 60 },
  },
  result: { text: 'Pressure loss', unit: 'Pa', min: 0, max: 1.2e15 },
  source: [{ text: 'Darcy and Weisbach, the unit conversion from memory', documents: ['darcy-weisbach'], confidence: 'memory' }],
  examples: [
    {
      kind: 'source',
      from: `${problem}, with the smooth friction factor at Re 1.27·10⁷`,
      inputs: { frictionFactor: 0.007_825_81, lengthM: 1, diameterM: 0.1, densityKgM3: 1000, velocityMs },
      result: 63.43447321097365,
      tolerance: 0.01,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 260, formulas: [formula(frictionLossRecord, frictionLoss)] }];
