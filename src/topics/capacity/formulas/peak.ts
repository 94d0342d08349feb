import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

/** A rush as a stream: so many racks an hour while it lasts, and how many are washed. */
export interface RushInputs {
  peakPerH: number;
  peakS: number;
  servedPerH: number;
}

/** And fewer after it. */
export interface PeakInputs extends RushInputs {
  afterPerH: number;
}

/** Racks that have piled up at the end of the rush. */
export function peakBacklog(inputs: RushInputs): FormulaResult {
  const refusal = findOutOfRange(peakBacklogRecord, inputs);
  return refusal === null ? { ok: true, value: pile(inputs) } : { ok: false, refusal };
}

/** Longest wait of a rack, in seconds: that of the last to come in the rush. */
export function peakLongestWait(inputs: RushInputs): FormulaResult {
  const refusal = findOutOfRange(peakLongestWaitRecord, inputs);
  return refusal === null ? { ok: true, value: (3600 * pile(inputs)) / inputs.servedPerH } : { ok: false, refusal };
}

/** Seconds after the rush until the pile is gone. */
export const peakClearing = (inputs: PeakInputs): FormulaResult => solve(peakClearingRecord, inputs, (_, clearingS) => clearingS);

const pile = ({ peakPerH, peakS, servedPerH }: RushInputs) => (Math.max(0, peakPerH - servedPerH) * peakS) / 3600;

function solve(
  record: FormulaRecord<PeakInputs>,
  inputs: PeakInputs,
  choose: (backlog: number, clearingS: number) => number,
): FormulaResult {
  const refusal = findOutOfRange(record, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { afterPerH, servedPerH } = inputs;
  const backlog = pile(inputs);
  if (backlog > 0 && afterPerH >= servedPerH)
    return { ok: false, refusal: createRefusal(record, 'pile-never-goes', { afterPerH, servedPerH }) };
  return { ok: true, value: choose(backlog, backlog === 0 ? 0 : (3600 * backlog) / (servedPerH - afterPerH)) };
}

const also = 'after the rush fewer racks come than are washed, or the pile never goes';

const rushInputs: FormulaRecord<RushInputs>['inputs'] = {
  peakPerH: { text: 'Racks an hour in the rush', unit: '1/h', min: 0, max: 2000 },
  peakS: { text: 'Length of the rush', unit: 's', min: 0, max: 43_200 },
  servedPerH: { text: 'Racks an hour that the machine really washes', unit: '1/h', min: 1, max: 2000 },
};
const inputs: FormulaRecord<PeakInputs>['inputs'] = {
  ...rushInputs,
  afterPerH: { text: 'Racks an hour after it', unit: '1/h', min: 0, max: 2000 },
};
const shared = {
  source: [{ text: 'Racks as a stream: what comes less what goes, over time', documents: ['arithmetic'], confidence: 'geometry' }],
  unprinted: 'Worked out from the areas under the two lines.',
} satisfies Partial<FormulaRecord<PeakInputs>>;

const rush: RushInputs = { peakPerH: 90, peakS: 3600, servedPerH: 60 };
const example = <Inputs extends RushInputs>(given: Inputs, from: string, result: number): FormulaRecord<Inputs>['examples'] => [
  {
    kind: 'regression',
    from: `90 racks/h for an hour, then 20, washed 60 an hour: ${from}`,
    inputs: given,
    result,
    tolerance: 1e-9,
  },
];

export const peakBacklogRecord: FormulaRecord<RushInputs> = {
  id: 'peak-backlog',
  title: 'Racks piled up',
  formula: 'B = (peak − served) · t, at least 0',
  result: { text: 'Racks at the end of the rush', unit: 'count', min: 0, max: 24_000 },
  inputs: rushInputs,
  ...shared,
  examples: example(rush, '30 racks', 30),
};

export const peakClearingRecord: FormulaRecord<PeakInputs> = {
  id: 'peak-clearing',
  title: 'Time until the pile is gone',
  formula: 't = B / (served − after)',
  result: { text: 'Time after the rush', unit: 's', min: 0, max: Number.POSITIVE_INFINITY },
  inputs,
  also,
  ...shared,
  examples: example({ ...rush, afterPerH: 20 }, '0.75 h', 2700),
};

export const peakLongestWaitRecord: FormulaRecord<RushInputs> = {
  id: 'peak-longest-wait',
  title: 'Longest wait of a rack',
  formula: 't = B / served',
  result: { text: 'Wait of the last rack of the rush', unit: 's', min: 0, max: 9e7 },
  inputs: rushInputs,
  ...shared,
  examples: example(rush, '30 min', 1800),
};

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 740,
    formulas: [
      formula(peakBacklogRecord, peakBacklog),
      formula(peakClearingRecord, peakClearing),
      formula(peakLongestWaitRecord, peakLongestWait),
    ],
  },
];
