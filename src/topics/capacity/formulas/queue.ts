import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

/** Whether the one in service counts. */
export const QUEUE_COUNTS = ['waiting', 'present'] as const;
export type QueueCount = (typeof QUEUE_COUNTS)[number];

export interface QueueInputs {
  arrivalsPerH: number;
  serviceS: number;
  /** Squared coefficient of variation of the service: 0 a machine's fixed cycle (M/D/1), 1 pure chance (M/M/1). */
  serviceCv2: number;
  counts: QueueCount;
}

/** Mean number that stand before one station with chance arrivals (Pollaczek and Khinchine). */
export function queueLength(inputs: QueueInputs): FormulaResult {
  const load = loadOf(queueLengthRecord, inputs);
  if (!load.ok) return load;
  const waiting = (load.value ** 2 * (1 + inputs.serviceCv2)) / (2 * (1 - load.value));
  return { ok: true, value: inputs.counts === 'waiting' ? waiting : waiting + load.value };
}

function loadOf(record: FormulaRecord<QueueInputs>, inputs: QueueInputs): FormulaResult {
  const refusal = findOutOfRange(record, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const load = (inputs.arrivalsPerH * inputs.serviceS) / 3600;
  return load < 1 ? { ok: true, value: load } : { ok: false, refusal: createRefusal(record, 'queue-without-end', { load }) };
}

const also = 'the load is below 1, or the queue grows without end';

const inputs: FormulaRecord<QueueInputs>['inputs'] = {
  arrivalsPerH: { text: 'Arrivals an hour', unit: '1/h', min: 0, max: 5000 },
  serviceS: { text: 'Mean time of service', unit: 's', min: 0.1, max: 36_000 },
  serviceCv2: { text: 'Squared coefficient of variation of the service', unit: 'ratio', min: 0, max: 4 },
  counts: { text: 'Whether the one in service counts', choices: QUEUE_COUNTS },
};
const source: FormulaRecord<QueueInputs>['source'] = [
  { text: 'M/D/1: Saylor course text, §4.5', documents: ['saylor-queueing'], confidence: 'read' },
  { text: 'Pollaczek-Khinchine for any service', documents: ['queueing-texts'], confidence: 'memory' },
];
const textbook = 'Simulation textbook, problem 2.6.1: 1.25 min between arrivals, 1 min of service, both by chance';
const chance = { arrivalsPerH: 48, serviceS: 60, serviceCv2: 1 };

export const queueLengthRecord: FormulaRecord<QueueInputs> = {
  id: 'queue-length',
  title: 'Length of a queue',
  formula: 'Lq = ρ² (1 + c²) / (2 (1 − ρ)), L = Lq + ρ',
  inputs,
  result: { text: 'Mean number', unit: 'count', min: 0, max: Number.POSITIVE_INFINITY },
  also,
  source,
  examples: [
    { kind: 'source', from: `${textbook}: Lq 3.2`, inputs: { ...chance, counts: 'waiting' }, result: 3.2, tolerance: 1e-9 },
    { kind: 'source', from: `${textbook}: L 4`, inputs: { ...chance, counts: 'present' }, result: 4, tolerance: 1e-9 },
    {
      kind: 'regression',
      from: 'a fixed cycle halves the queue',
      inputs: { ...chance, serviceCv2: 0, counts: 'waiting' },
      result: 1.6,
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 720, formulas: [formula(queueLengthRecord, queueLength)] }];
