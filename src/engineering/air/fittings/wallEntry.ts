import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';
import { interpolate, type Points } from '../interpolate';

export interface WallEntryInputs {
  /** How far the duct stands out of the wall, over its diameter. */
  projectionRatio: number;
}

/** Loss coefficient of a thin-walled duct that stands out of a wall by so much. From half a diameter on the wall no longer helps. */
export function wallEntry(inputs: WallEntryInputs): Outcome {
  const reason = findOutOfRange(wallEntryRecord, inputs);
  return reason === null ? { ok: true, value: interpolate(COEFFICIENTS, inputs.projectionRatio) } : { ok: false, reason };
}

const FAR = 100;

const COEFFICIENTS: Points = [
  [0, 0.5],
  [0.002, 0.57],
  [0.01, 0.68],
  [0.05, 0.8],
  [0.2, 0.92],
  [0.5, 1],
  [FAR, 1],
];

const table = 'Idelchik 3-1, as in Principles of HVAC, 9th ed. supplement (A-X6)';

export const wallEntryRecord: FormulaRecord<WallEntryInputs> = {
  id: 'duct-entry-wall',
  title: 'Loss of an entry through a wall',
  formula: 'C(L/D) for a thin edge, straight lines between the points of the table',
  inputs: { projectionRatio: { text: 'Projection over diameter', unit: 'ratio', min: 0, max: FAR } },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0.5, max: 1 },
  source: [{ text: table, confidence: 'secondary' }],
  examples: COEFFICIENTS.slice(0, 6).map(([projectionRatio, result]) => ({
    kind: 'source',
    from: table,
    inputs: { projectionRatio },
    result,
    tolerance: 1e-12,
  })),
};
