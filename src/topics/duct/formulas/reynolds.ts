import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface ReynoldsInputs {
  velocityMs: number;
  diameterM: number;
  densityKgM3: number;
  viscosityPas: number;
}

/** Reynolds number of flow in a duct: what is driven over what is dragged. */
export function reynolds(inputs: ReynoldsInputs): FormulaResult {
  const refusal = findOutOfRange(reynoldsRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { velocityMs, diameterM, densityKgM3, viscosityPas } = inputs;
  return { ok: true, value: (densityKgM3 * velocityMs * diameterM) / viscosityPas };
}

const library = 'fluids library, core.py';

export const reynoldsRecord: FormulaRecord<ReynoldsInputs> = {
  id: 'reynolds-number',
  title: 'Reynolds number',
  formula: 'Re = ρ V D / μ',
  inputs: {
    velocityMs: { text: 'Velocity', unit: 'm/s', min: 0, max: 60 },
    diameterM: { text: 'Diameter, or the hydraulic one', unit: 'm', min: 0.01, max: 10 },
    densityKgM3: { text: 'Density', unit: 'kg/m3', min: 0.1, max: 2000 },
    viscosityPas: { text: 'Dynamic viscosity', unit: 'Pa·s', min: 1e-6, max: 1 },
  },
  result: { text: 'Reynolds number', unit: 'ratio', min: 0, max: 1.2e12 },
  source: [{ text: library, documents: ['fluids-library'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: library,
      inputs: { velocityMs: 2.5, diameterM: 0.25, densityKgM3: 1.1613, viscosityPas: 1.9e-5 },
      result: 38_200.65789473684,
      tolerance: 1e-6,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 240, formulas: [formula(reynoldsRecord, reynolds)] }];
