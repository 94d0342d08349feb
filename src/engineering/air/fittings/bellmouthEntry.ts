import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';
import { interpolate, type Points } from '../interpolate';

export interface BellmouthInputs {
  /** Radius of the rounding over the diameter. */
  radiusRatio: number;
}

/** Loss coefficient of a rounded entry that stands free, without a wall about it. */
export function bellmouthEntry(inputs: BellmouthInputs): Outcome {
  const reason = findOutOfRange(bellmouthEntryRecord, inputs);
  return reason === null ? { ok: true, value: interpolate(COEFFICIENTS, inputs.radiusRatio) } : { ok: false, reason };
}

const COEFFICIENTS: Points = [
  [0, 1],
  [0.05, 0.4],
  [0.1, 0.15],
  [0.2, 0.03],
];

const table = 'Idelchik, as in Principles of HVAC, 9th ed. supplement (A-X7)';

export const bellmouthEntryRecord: FormulaRecord<BellmouthInputs> = {
  id: 'duct-entry-bellmouth',
  title: 'Loss of a rounded entry',
  formula: 'C(r/D), straight lines between the points of the table',
  inputs: { radiusRatio: { text: 'Radius over diameter', unit: 'ratio', min: 0, max: 0.2 } },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0.03, max: 1 },
  source: [{ text: table, confidence: 'secondary' }],
  examples: COEFFICIENTS.map(([radiusRatio, result]) => ({
    kind: 'source',
    from: table,
    inputs: { radiusRatio },
    result,
    tolerance: 1e-12,
  })),
};
