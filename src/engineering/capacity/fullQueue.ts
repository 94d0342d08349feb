import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

export interface FullQueueInputs {
  arrivalsPerH: number;
  serviceS: number;
  /** Places in all, the one in service among them. */
  places: number;
}

/** Part of the arrivals that finds no place left before a station (M/M/1/K): a drop-off that runs over. */
export function turnedAwayShare(inputs: FullQueueInputs): Outcome {
  const reason = refusal(turnedAwayShareRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: probabilities(inputs).at(-1) ?? 0 };
}

/** Mean number at that station. */
export function numberAtFullQueue(inputs: FullQueueInputs): Outcome {
  const reason = refusal(numberAtFullQueueRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: probabilities(inputs).reduce((sum, p, n) => sum + n * p, 0) };
}

/** How likely it is that 0, 1, … places are taken: ρⁿ over their sum, counted down from the largest so that nothing overflows. */
function probabilities({ arrivalsPerH, serviceS, places }: FullQueueInputs): number[] {
  const load = (arrivalsPerH * serviceS) / 3600;
  const weights = Array.from({ length: places + 1 }, (_, n) => (load > 1 ? load ** (n - places) : load ** n));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
}

function refusal(record: FormulaRecord<FullQueueInputs>, inputs: FullQueueInputs): string | null {
  const reason = findOutOfRange(record, inputs);
  return reason ?? (Number.isInteger(inputs.places) ? null : `places is ${inputs.places}; it is a whole number`);
}

const inputs: FormulaRecord<FullQueueInputs>['inputs'] = {
  arrivalsPerH: { text: 'Arrivals an hour', unit: '1/h', min: 0, max: 5000 },
  serviceS: { text: 'Mean time of service', unit: 's', min: 0.1, max: 36_000 },
  places: { text: 'Places, the one in service among them', unit: 'count', min: 1, max: 1000 },
};
const source: FormulaRecord<FullQueueInputs>['source'] = [
  { text: 'M/M/1/K, standard in queueing texts (L-Q09, L-Q10)', confidence: 'memory' },
];
const unprinted = 'The inputs of L-Q10 are read, its answer is worked out.';
const station: FullQueueInputs = { arrivalsPerH: 1.8, serviceS: 1800, places: 12 };

export const turnedAwayShareRecord: FormulaRecord<FullQueueInputs> = {
  id: 'turned-away-share',
  title: 'Share that finds no place',
  formula: 'p_K = ρ^K / Σ ρ^n, n from 0 to K',
  inputs,
  result: { text: 'Part of the arrivals', unit: 'ratio', min: 0, max: 1 },
  source,
  unprinted,
  examples: [
    {
      kind: 'regression',
      from: 'load 0.5, 3 places: 1/15 (L-Q09)',
      inputs: { arrivalsPerH: 30, serviceS: 60, places: 3 },
      result: 1 / 15,
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: '1.8/h, ½ h, 12 places: 1.731836/h pass (L-Q10)',
      inputs: station,
      result: 1 - 1.731836 / 1.8,
      tolerance: 1e-6,
    },
  ],
};

export const numberAtFullQueueRecord: FormulaRecord<FullQueueInputs> = {
  id: 'number-at-full-queue',
  title: 'Number at a station with few places',
  formula: 'L = Σ n ρ^n / Σ ρ^n, n from 0 to K',
  inputs,
  result: { text: 'Mean number', unit: 'count', min: 0, max: 1000 },
  source,
  unprinted,
  examples: [{ kind: 'regression', from: '1.8/h, ½ h, 12 places (L-Q10)', inputs: station, result: 4.569367, tolerance: 1e-6 }],
};
