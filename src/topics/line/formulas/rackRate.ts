import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface RackRateInputs {
  racksPerCycle: number;
  washS: number;
  rinseS: number;
  dwellS: number;
  /** Changing racks: 5 s for a door machine straight through, 30 s under a counter; at a corner it is the user's. */
  loadS: number;
}

/** Racks an hour of a stationary-rack machine. The time to change racks is part of the cycle; without it the rate is too high. */
export function rackRate(inputs: RackRateInputs): FormulaResult {
  const refusal = findOutOfRange(rackRateRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const cycleS = inputs.washS + inputs.rinseS + inputs.dwellS + inputs.loadS;
  if (cycleS < SHORTEST_S) return { ok: false, refusal: createRefusal(rackRateRecord, 'cycle-too-short', { cycleS, leastS: SHORTEST_S }) };
  return { ok: true, value: (3600 * inputs.racksPerCycle) / cycleS };
}

const SHORTEST_S = 10;
const also = `a cycle takes at least ${SHORTEST_S} s`;

const trade = 'Trade magazine restating the method: a 2-minute cycle under a counter gives 24 racks an hour, not 30';
const cycle = (washS: number, loadS: number): RackRateInputs => ({ racksPerCycle: 1, washS, rinseS: 0, dwellS: 0, loadS });

export const rackRateRecord: FormulaRecord<RackRateInputs> = {
  id: 'rack-rate',
  title: 'Racks an hour',
  formula: 'RPH = 3600 · NR / TC, TC = wash + rinse + dwell + load',
  inputs: {
    racksPerCycle: { text: 'Racks in one cycle', unit: 'count', min: 1, max: 4 },
    washS: { text: 'Wash', unit: 's', min: 0, max: 3600 },
    rinseS: { text: 'Final rinse', unit: 's', min: 0, max: 3600 },
    dwellS: { text: 'Dwell and any hold', unit: 's', min: 0, max: 3600 },
    loadS: { text: 'Changing racks', unit: 's', min: 0, max: 600 },
  },
  result: { text: 'Racks an hour', unit: '1/h', min: 0, max: 1440 },
  also,
  source: [
    {
      text: 'NSF/ANSI 3 listings, preface, 8 March 2025: rate and what the cycle includes; load time 5 s straight through',
      documents: ['nsf-ansi-3'],
      confidence: 'read',
    },
    { text: trade, documents: ['rack-rate-article'], confidence: 'secondary' },
  ],
  examples: [
    { kind: 'source', from: trade, inputs: cycle(120, 30), result: 24, tolerance: 0 },
    { kind: 'regression', from: '60 s and 5 s', inputs: cycle(60, 5), result: 55.3846, tolerance: 1e-4 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 660, group: 'capacity', formulas: [formula(rackRateRecord, rackRate)] }];
