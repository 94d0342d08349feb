import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, interpolate, type Points } from '../../../rules';

export interface RectangularMitreInputs {
  /** Side along the axis of the turn over the side across it. */
  heightRatio: number;
}

/** Loss coefficient of a rectangular bend of 90° with one mitred joint and no vanes. */
export function rectangularMitre(inputs: RectangularMitreInputs): FormulaResult {
  const refusal = findOutOfRange(rectangularMitreRecord, inputs);
  return refusal === null ? { ok: true, value: interpolate(COEFFICIENTS, inputs.heightRatio) } : { ok: false, refusal };
}

/** The source prints two flat stretches and its last value; between them it falls steadily. */
const COEFFICIENTS: Points = [
  [0.25, 1.3],
  [0.5, 1.3],
  [0.75, 1.2],
  [1, 1.2],
  [8, 0.83],
];

const table = 'SMACNA HVAC Systems Duct Design, 4th ed., Table A-7D, and ASHRAE 1989 as reprinted';

export const rectangularMitreRecord: FormulaRecord<RectangularMitreInputs> = {
  id: 'bend-rectangular-mitred',
  title: 'Loss of a mitred rectangular bend',
  formula: 'C of the 90° mitre over H/W, straight lines between the points that are held',
  inputs: { heightRatio: { text: 'Height over width, H/W', unit: 'ratio', min: 0.25, max: 8 } },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0.83, max: 1.3 },
  source: [{ text: table, documents: ['ashrae-fundamentals-2005', 'smacna-duct-design'], confidence: 'secondary' }],
  examples: COEFFICIENTS.map(([heightRatio, result]) => ({
    kind: 'source',
    from: table,
    inputs: { heightRatio },
    result,
    tolerance: 1e-12,
  })),
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 330, formulas: [formula(rectangularMitreRecord, rectangularMitre)] }];
