import { bendFactor } from '../../bendFactor';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';
import { interpolate, type Points } from '../interpolate';

export interface RectangularBendInputs {
  /** Side along the axis of the turn over the side across it. */
  heightRatio: number;
  angleDeg: number;
}

/** Loss coefficient of a rectangular bend without vanes whose centre line turns at 1.5 widths: the only radius of which values are held. */
export function rectangularBend(inputs: RectangularBendInputs): Outcome {
  const reason = findOutOfRange(rectangularBendRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  const factor = bendFactor({ angleDeg: inputs.angleDeg, rule: 'k-table' });
  return factor.ok ? { ok: true, value: interpolate(RIGHT_ANGLE, inputs.heightRatio) * factor.value } : factor;
}

const RIGHT_ANGLE: Points = [
  [0.25, 0.22],
  [1, 0.17],
  [2, 0.14],
];

const table = 'ASHRAE Handbook 2005 Fundamentals, CR3-1, r/W 1.5, single values (A-B10)';

export const rectangularBendRecord: FormulaRecord<RectangularBendInputs> = {
  id: 'bend-rectangular',
  title: 'Loss of a rectangular bend',
  formula: 'C of the 90° bend of r/W 1.5, straight lines between the points over H/W × factor of the angle',
  inputs: {
    heightRatio: { text: 'Height over width, H/W', unit: 'ratio', min: 0.25, max: 2 },
    angleDeg: { text: 'Change of direction', unit: 'deg', min: 0, max: 180 },
  },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0, max: 0.31 },
  source: [{ text: `${table}; angle factors as of round bends (A-B2)`, confidence: 'secondary' }],
  examples: [
    { kind: 'source', from: table, inputs: { heightRatio: 1, angleDeg: 90 }, result: 0.17, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: { heightRatio: 0.25, angleDeg: 90 }, result: 0.22, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: { heightRatio: 2, angleDeg: 90 }, result: 0.14, tolerance: 1e-12 },
    { kind: 'regression', from: 'half way from 0.17 to 0.14', inputs: { heightRatio: 1.5, angleDeg: 90 }, result: 0.155, tolerance: 1e-12 },
  ],
};
