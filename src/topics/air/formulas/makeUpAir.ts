import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface MakeUpInputs {
  exhaustM3s: number;
  /** Part of the exhaust that comes as transfer air from other rooms and by leaks, which keeps the dish room below them. */
  deficitShare: number;
}

/** Make-up air in m³/s for an exhaust. "Approximately equal" in the code; the rest comes from the rooms about it. */
export function makeUpAir(inputs: MakeUpInputs): FormulaResult {
  const refusal = findOutOfRange(makeUpAirRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.exhaustM3s * (1 - inputs.deficitShare) } : { ok: false, refusal };
}

/** The most that plan reviewers let be missing: an opinion, not law. */
export const MOST_DEFICIT_SHARE = 0.2;

export interface MakeUpDifferenceInputs {
  makeUpC: number;
  roomC: number;
}

/** How far in K the make-up air is from the room, above or below. */
export function makeUpDifference(inputs: MakeUpDifferenceInputs): FormulaResult {
  const refusal = findOutOfRange(makeUpDifferenceRecord, inputs);
  return refusal === null ? { ok: true, value: Math.abs(inputs.makeUpC - inputs.roomC) } : { ok: false, refusal };
}

const amount = '2006 IMC 508.1: approximately equal to the exhaust';
const deficit = 'Plan reviewers: a deficit of up to about 20 %';
const city = 'NYC Mechanical Code 508.1.1: at most 10 °F from the room';

export const makeUpAirRecord: FormulaRecord<MakeUpInputs> = {
  id: 'make-up-air',
  title: 'Make-up air',
  formula: 'Q_m = Q (1 − d)',
  inputs: {
    exhaustM3s: { text: 'Exhaust', unit: 'm3/s', min: 0, max: 100 },
    deficitShare: { text: 'Part that comes as transfer air', unit: 'share', min: 0, max: MOST_DEFICIT_SHARE },
  },
  result: { text: 'Make-up air', unit: 'm3/s', min: 0, max: 100 },
  source: [
    { text: amount, documents: ['imc'], confidence: 'secondary' },
    { text: deficit, documents: ['plan-reviewers'], confidence: 'secondary' },
  ],
  examples: [
    { kind: 'source', from: amount, inputs: { exhaustM3s: toSI(400, 'cfm'), deficitShare: 0 }, result: toSI(400, 'cfm'), tolerance: 1e-12 },
    {
      kind: 'source',
      from: deficit,
      inputs: { exhaustM3s: toSI(400, 'cfm'), deficitShare: 0.2 },
      result: toSI(320, 'cfm'),
      tolerance: 1e-12,
    },
  ],
};

export const makeUpDifferenceRecord: FormulaRecord<MakeUpDifferenceInputs> = {
  id: 'make-up-difference',
  title: 'Make-up air and the room',
  formula: 'Δt = |t_m − t_r|',
  inputs: {
    makeUpC: { text: 'Make-up air', unit: 'C', min: -40, max: 60 },
    roomC: { text: 'Room', unit: 'C', min: -20, max: 60 },
  },
  result: { text: 'Difference of temperature', unit: 'K', min: 0, max: 100 },
  source: [{ text: city, documents: ['nyc-mechanical-code'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: `${city}: air of 65 °F into a room of 75 °F is at the limit`,
      inputs: { makeUpC: toSI(65, 'F'), roomC: toSI(75, 'F') },
      result: toSI(10, 'deltaF'),
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 110, formulas: [formula(makeUpAirRecord, makeUpAir), formula(makeUpDifferenceRecord, makeUpDifference)] },
];
