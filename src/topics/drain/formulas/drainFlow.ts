import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';
import { toSI } from '../../../units';
import { partFull } from './support/partFull';

export interface DrainFlowInputs {
  boreM: number;
  /** Fall over length. */
  slope: number;
  /** Manning's n: 0.009 smooth plastic, 0.012 to 0.013 cast iron, 0.015 old. */
  roughness: number;
  /** Depth of water over bore: 0.5 is half full, as sanitary drains are sized; 1 is full. */
  depth: number;
}

/** Flow in m³/s of a sloping round drain at a depth, by Manning. */
export function drainFlow(inputs: DrainFlowInputs): FormulaResult {
  const refusal = findOutOfRange(drainFlowRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: speedOf(inputs) * partFull(inputs.depth).area * inputs.boreM ** 2 };
}

/** Speed in m/s of that flow; about 0.6 m/s (2 ft/s) keeps a drain clean. */
export function drainSpeed(inputs: DrainFlowInputs): FormulaResult {
  const refusal = findOutOfRange(drainSpeedRecord, inputs);
  return refusal === null ? { ok: true, value: speedOf(inputs) } : { ok: false, refusal };
}

function speedOf({ boreM, slope, roughness, depth }: DrainFlowInputs): number {
  return (partFull(depth).radius * boreM) ** (2 / 3) * (Math.sqrt(slope) / roughness);
}

/** Speed that scours a drain, NSPC 2009, Appendix K. */
export const SCOURING_SPEED = toSI(2, 'ft/s');

const inputs: FormulaRecord<DrainFlowInputs>['inputs'] = {
  boreM: { text: 'Inside diameter', unit: 'm', min: inches(1.25), max: inches(8) },
  slope: { text: 'Fall over length', unit: 'slope', min: 0.004, max: 0.1 },
  roughness: { text: "Manning's n: 0.009 smooth plastic, 0.013 cast iron, 0.015 old", unit: 'ratio', min: 0.008, max: 0.02 },
  depth: { text: 'Depth of water over inside diameter', unit: 'ratio', min: 0.05, max: 1 },
};
const source: FormulaRecord<DrainFlowInputs>['source'] = [
  { text: 'NSPC 2009, Appendix K: sized half full, 2 ft/s, flow times 0.015 / n', documents: ['nspc'], confidence: 'read' },
  { text: "Manning's equation, standard in hydraulics texts", documents: ['hydraulics-texts'], confidence: 'memory' },
];
const unprinted = 'The tables K-1 and K-2 are not at hand; the ratios of the appendix hold the shape in partial filling.';
const at = (bore: number, fall: number, roughness: number): DrainFlowInputs => ({
  boreM: inches(bore),
  slope: fall / 12,
  roughness,
  depth: 0.5,
});

export const drainFlowRecord: FormulaRecord<DrainFlowInputs> = {
  id: 'drain-flow',
  title: 'Capacity of a drain',
  formula: 'Q = A · R^(2/3) · s^(1/2) / n',
  inputs,
  result: { text: 'Flow', unit: 'm3/s', min: 0, max: 0.3 },
  source,
  unprinted,
  examples: [
    {
      kind: 'regression',
      from: '2 in at ¼ in/ft, n 0.012, half full: 10.5 gpm',
      inputs: at(2, 0.25, 0.012),
      result: toSI(10.5, 'gpm'),
      tolerance: toSI(0.05, 'gpm'),
    },
    {
      kind: 'regression',
      from: '4 in at ¼ in/ft, n 0.015, half full: 53.4 gpm',
      inputs: at(4, 0.25, 0.015),
      result: toSI(53.4, 'gpm'),
      tolerance: toSI(0.1, 'gpm'),
    },
  ],
};

export const drainSpeedRecord: FormulaRecord<DrainFlowInputs> = {
  id: 'drain-speed',
  title: 'Speed in a drain',
  formula: 'v = R^(2/3) · s^(1/2) / n',
  inputs,
  result: { text: 'Speed', unit: 'm/s', min: 0, max: 8 },
  source,
  unprinted,
  examples: [
    {
      kind: 'regression',
      from: '2 in at ¼ in/ft, n 0.012, half full: 2.15 ft/s',
      inputs: at(2, 0.25, 0.012),
      result: toSI(2.15, 'ft/s'),
      tolerance: toSI(0.005, 'ft/s'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1030, formulas: [formula(drainFlowRecord, drainFlow), formula(drainSpeedRecord, drainSpeed)] }];
