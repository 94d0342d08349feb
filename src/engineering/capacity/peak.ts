import { type Formula, formula } from '../formula';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

/** A rush as a stream: so many racks an hour while it lasts, fewer after it. */
export interface PeakInputs {
  peakPerH: number;
  peakS: number;
  afterPerH: number;
  servedPerH: number;
}

/** Racks that have piled up at the end of the rush. */
export const peakBacklog = (inputs: PeakInputs): Outcome => solve(peakBacklogRecord, inputs, ({ backlog }) => backlog);

/** Seconds after the rush until the pile is gone. */
export const peakClearing = (inputs: PeakInputs): Outcome => solve(peakClearingRecord, inputs, ({ clearingS }) => clearingS);

/** Longest wait of a rack, in seconds: that of the last to come in the rush. */
export const peakLongestWait = (inputs: PeakInputs): Outcome => solve(peakLongestWaitRecord, inputs, ({ longestS }) => longestS);

/** Time that all racks together wait, in rack-seconds: the area under the pile. */
export const peakTotalWait = (inputs: PeakInputs): Outcome => solve(peakTotalWaitRecord, inputs, ({ totalS }) => totalS);

interface PeakFigures {
  backlog: number;
  clearingS: number;
  longestS: number;
  totalS: number;
}

function solve(record: FormulaRecord<PeakInputs>, inputs: PeakInputs, choose: (figures: PeakFigures) => number): Outcome {
  const reason = findOutOfRange(record, inputs);
  if (reason !== null) return { ok: false, reason };
  const { peakPerH, peakS, afterPerH, servedPerH } = inputs;
  const backlog = (Math.max(0, peakPerH - servedPerH) * peakS) / 3600;
  if (backlog > 0 && afterPerH >= servedPerH)
    return { ok: false, reason: `afterPerH is ${afterPerH} and servedPerH ${servedPerH}; ${also}` };
  const clearingS = backlog === 0 ? 0 : (3600 * backlog) / (servedPerH - afterPerH);
  return {
    ok: true,
    value: choose({ backlog, clearingS, longestS: (3600 * backlog) / servedPerH, totalS: (backlog * (peakS + clearingS)) / 2 }),
  };
}

const also = 'after the rush fewer racks come than are washed, or the pile never goes';

const inputs: FormulaRecord<PeakInputs>['inputs'] = {
  peakPerH: { text: 'Racks an hour in the rush', unit: '1/h', min: 0, max: 2000 },
  peakS: { text: 'Length of the rush', unit: 's', min: 0, max: 43_200 },
  afterPerH: { text: 'Racks an hour after it', unit: '1/h', min: 0, max: 2000 },
  servedPerH: { text: 'Racks an hour that the machine really washes', unit: '1/h', min: 1, max: 2000 },
};
const shared = {
  inputs,
  also,
  source: [{ text: 'Racks as a stream: what comes less what goes, over time (L-CT7)', confidence: 'geometry' }],
  unprinted: 'Worked out from the areas under the two lines.',
} satisfies Partial<FormulaRecord<PeakInputs>>;

const rush: PeakInputs = { peakPerH: 90, peakS: 3600, afterPerH: 20, servedPerH: 60 };
const example = (from: string, result: number): FormulaRecord<PeakInputs>['examples'] => [
  {
    kind: 'regression',
    from: `90 racks/h for an hour, then 20, washed 60 an hour: ${from} (L-CT7)`,
    inputs: rush,
    result,
    tolerance: 1e-9,
  },
];

const peakBacklogRecord: FormulaRecord<PeakInputs> = {
  id: 'peak-backlog',
  title: 'Racks piled up',
  formula: 'B = (peak − served) · t, at least 0',
  result: { text: 'Racks at the end of the rush', unit: 'count', min: 0, max: 24_000 },
  ...shared,
  examples: example('30 racks', 30),
};

const peakClearingRecord: FormulaRecord<PeakInputs> = {
  id: 'peak-clearing',
  title: 'Time until the pile is gone',
  formula: 't = B / (served − after)',
  result: { text: 'Time after the rush', unit: 's', min: 0, max: Number.POSITIVE_INFINITY },
  ...shared,
  examples: example('0.75 h', 2700),
};

const peakLongestWaitRecord: FormulaRecord<PeakInputs> = {
  id: 'peak-longest-wait',
  title: 'Longest wait of a rack',
  formula: 't = B / served',
  result: { text: 'Wait of the last rack of the rush', unit: 's', min: 0, max: 9e7 },
  ...shared,
  examples: example('30 min', 1800),
};

const peakTotalWaitRecord: FormulaRecord<PeakInputs> = {
  id: 'peak-total-wait',
  title: 'Wait of all racks together',
  formula: 'Σ = B · (length of the rush + time to clear) / 2',
  result: { text: 'Rack-seconds', unit: 's', min: 0, max: Number.POSITIVE_INFINITY },
  ...shared,
  examples: example('26.25 rack-hours', 26.25 * 3600),
};

export const PEAK_FORMULAS: readonly Formula[] = [
  formula(peakBacklogRecord, peakBacklog),
  formula(peakClearingRecord, peakClearing),
  formula(peakLongestWaitRecord, peakLongestWait),
  formula(peakTotalWaitRecord, peakTotalWait),
];
