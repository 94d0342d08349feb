import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  findOutOfRange,
  formula,
  interpolate,
  type Points,
} from '../../../rules';
import { bendFactor } from './bendFactor';

export interface RectangularBendInputs {
  /** Side along the axis of the turn over the side across it. */
  heightRatio: number;
  /** Radius of the centre line over the side across the axis of the turn. */
  radiusRatio: number;
  angleDeg: number;
}

/** Loss coefficient of a rectangular bend without vanes, where values of it are held: it refuses between them. */
export function rectangularBend(inputs: RectangularBendInputs): FormulaResult {
  const refusal = findOutOfRange(rectangularBendRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const rightAngle = readTable(inputs);
  if (rightAngle === null) return { ok: false, refusal: refuseBend(inputs) };
  const factor = bendFactor({ angleDeg: inputs.angleDeg, rule: 'k-table' });
  return factor.ok ? { ok: true, value: rightAngle * factor.value } : factor;
}

/** Rows of the table over H/W, and its column of a square duct from the usual radius on. */
const TIGHT: Points = [
  [1, 1.18],
  [2, 1],
];
const USUAL: Points = [
  [0.25, 0.22],
  [1, 0.17],
  [2, 0.14],
];
const SQUARE: Points = [
  [1.5, 0.17],
  [2, 0.15],
];

const DUST = 1e-9;
const isAt = (value: number, at: number) => Math.abs(value - at) < DUST;

function readTable({ heightRatio, radiusRatio }: RectangularBendInputs): number | null {
  if (isAt(radiusRatio, 1.5)) return interpolate(USUAL, heightRatio);
  if (isAt(radiusRatio, 0.5) && heightRatio >= 1 - DUST) return interpolate(TIGHT, Math.max(1, heightRatio));
  return radiusRatio > 1.5 && isAt(heightRatio, 1) ? interpolate(SQUARE, radiusRatio) : null;
}

const refuseBend = ({ heightRatio, radiusRatio }: RectangularBendInputs) =>
  createRefusal(rectangularBendRecord, 'bend-not-known', { heightRatio, radiusRatio });

const also = 'a rectangular bend is known at r/W 1.5, at r/W 0.5 from H/W 1 on, and from r/W 1.5 on where it is square';

const table = 'ASHRAE Handbook 2005 Fundamentals, CR3-1, single values';
const bend = (radiusRatio: number, heightRatio: number): RectangularBendInputs => ({ radiusRatio, heightRatio, angleDeg: 90 });

export const rectangularBendRecord: FormulaRecord<RectangularBendInputs> = {
  id: 'bend-rectangular',
  title: 'Loss of a rectangular bend',
  formula: 'C of the 90° bend, straight lines between the points that are held × factor of the angle',
  inputs: {
    heightRatio: { text: 'Height over width, H/W', unit: 'ratio', min: 0.25, max: 2 },
    radiusRatio: { text: 'Radius over width, r/W', unit: 'ratio', min: 0.5, max: 2 },
    angleDeg: { text: 'Change of direction', unit: 'deg', min: 0, max: 180 },
  },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0, max: 1.66 },
  source: [
    {
      text: `${table}; angle factors as of round bends`,
      documents: ['ashrae-fundamentals-2005', 'smacna-duct-design'],
      confidence: 'secondary',
    },
  ],
  examples: [
    { kind: 'source', from: table, inputs: bend(1.5, 1), result: 0.17, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: bend(1.5, 0.25), result: 0.22, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: bend(1.5, 2), result: 0.14, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: bend(0.5, 1), result: 1.18, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: bend(0.5, 2), result: 1, tolerance: 1e-12 },
    { kind: 'source', from: table, inputs: bend(2, 1), result: 0.15, tolerance: 1e-12 },
    { kind: 'regression', from: 'half way from 0.17 to 0.14', inputs: bend(1.5, 1.5), result: 0.155, tolerance: 1e-12 },
  ],
  also,
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 320, formulas: [formula(rectangularBendRecord, rectangularBend)] }];
