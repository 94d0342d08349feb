import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { bendFactor } from './bendFactor';

export const SEGMENT_PIECES = ['3', '4', '5'] as const;

export interface SegmentedBendInputs {
  pieces: (typeof SEGMENT_PIECES)[number];
  angleDeg: number;
}

/** Loss coefficient of a round bend made of straight pieces, of radius 1.5 diameters: the only radius of which values are held. */
export function segmentedBend(inputs: SegmentedBendInputs): FormulaResult {
  const refusal = findOutOfRange(segmentedBendRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const factor = bendFactor({ angleDeg: inputs.angleDeg, rule: 'k-table' });
  return factor.ok ? { ok: true, value: RIGHT_ANGLE[inputs.pieces] * factor.value } : factor;
}

const RIGHT_ANGLE = { 3: 0.34, 4: 0.27, 5: 0.24 };

const table = 'SMACNA HVAC Systems Duct Design, 4th ed., Table A-7B, single values';

export const segmentedBendRecord: FormulaRecord<SegmentedBendInputs> = {
  id: 'bend-segmented',
  title: 'Loss of a segmented bend',
  formula: 'C of the 90° bend of r/D 1.5 × factor of the angle',
  inputs: {
    pieces: { text: 'Straight pieces that make the bend', choices: SEGMENT_PIECES },
    angleDeg: { text: 'Change of direction', unit: 'deg', min: 0, max: 90 },
  },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0, max: 0.34 },
  source: [
    { text: table, documents: ['smacna-duct-design'], confidence: 'secondary' },
    { text: 'Angle factors of the same table, note 1', documents: ['smacna-duct-design'], confidence: 'secondary' },
  ],
  examples: [
    { kind: 'source', from: table, inputs: { pieces: '5', angleDeg: 90 }, result: 0.24, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: { pieces: '4', angleDeg: 90 }, result: 0.27, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: { pieces: '3', angleDeg: 90 }, result: 0.34, tolerance: 1e-12 },
    { kind: 'regression', from: '0.24 × 0.60', inputs: { pieces: '5', angleDeg: 45 }, result: 0.144, tolerance: 1e-12 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 300, formulas: [formula(segmentedBendRecord, segmentedBend)] }];
