import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface FittingLossInputs {
  /** Below 0 where a branch draws the other along. */
  coefficient: number;
  velocityPressurePa: number;
}

/** Pressure in Pa that a fitting takes: its coefficient times the velocity pressure where the coefficient is counted. */
export function fittingLoss(inputs: FittingLossInputs): FormulaResult {
  const refusal = findOutOfRange(fittingLossRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.coefficient * inputs.velocityPressurePa } : { ok: false, refusal };
}

const sheet = 'Velocity-pressure sheet: entry (0.65 + 1) of 1.24 in. wg is 2.046 in. wg';

export const fittingLossRecord: FormulaRecord<FittingLossInputs> = {
  id: 'fitting-loss',
  title: 'Loss of a fitting',
  formula: 'Δp = C · VP',
  inputs: {
    coefficient: { text: 'Loss coefficient', unit: 'ratio', min: -5, max: 100 },
    velocityPressurePa: { text: 'Velocity pressure', unit: 'Pa', min: 0, max: 3.6e6 },
  },
  result: { text: 'Pressure loss', unit: 'Pa', min: -1.8e7, max: 3.6e8 },
  source: [{ text: sheet, documents: ['velocity-pressure-sheet'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: sheet,
      inputs: { coefficient: 1.65, velocityPressurePa: toSI(1.24, 'inH2O') },
      result: toSI(2.046, 'inH2O'),
      tolerance: 1e-6,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 270, formulas: [formula(fittingLossRecord, fittingLoss)] }];
