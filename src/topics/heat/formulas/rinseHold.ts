import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';
import { HEAT_J_PER_M3_K } from '../../water';

export interface RinseHoldInputs {
  perCycleM3: number;
  supplyC: number;
  rinseC: number;
  boosterW: number;
  efficiency: number;
  /** Wash, rinse, dwell and changing racks. */
  cycleS: number;
}

/**
 * Seconds that the machine goes on washing until its booster is ready for the rinse, at steady work: the booster
 * has the whole cycle to heat the water of one. The first racks of a rush may live on what the booster has stored.
 */
export function rinseHold(inputs: RinseHoldInputs): FormulaResult {
  const refusal = findOutOfRange(rinseHoldRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: Math.max(0, reheatS(inputs) - inputs.cycleS) };
}

function reheatS({ perCycleM3, supplyC, rinseC, boosterW, efficiency }: RinseHoldInputs): number {
  return (perCycleM3 * Math.max(0, rinseC - supplyC) * HEAT_J_PER_M3_K) / (boosterW * efficiency);
}

/** Seconds of the whole cycle that follow: the rated cycle, or what the booster takes when that is longer. */
export function heldCycle(inputs: RinseHoldInputs): FormulaResult {
  const refusal = findOutOfRange(heldCycleRecord, inputs);
  return refusal === null ? { ok: true, value: Math.max(inputs.cycleS, reheatS(inputs)) } : { ok: false, refusal };
}

/** Racks an hour that follow: the rated cycle with the hold added. */
export function heldRackRate(inputs: RinseHoldInputs & { racksPerCycle: number }): FormulaResult {
  const refusal = findOutOfRange(heldRackRateRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: (3600 * inputs.racksPerCycle) / Math.max(inputs.cycleS, reheatS(inputs)) };
}

const inputs: FormulaRecord<RinseHoldInputs>['inputs'] = {
  perCycleM3: { text: 'Rinse water of one cycle', unit: 'm3', min: 0, max: 0.05 },
  supplyC: { text: 'Temperature of the supply', unit: 'C', min: 0, max: 95 },
  rinseC: { text: 'Temperature of the final rinse', unit: 'C', min: 40, max: 95 },
  boosterW: { text: 'Power of the booster', unit: 'W', min: 500, max: 200_000 },
  efficiency: { text: 'Part of it that stays in the water', unit: 'share', min: 0.3, max: 1 },
  cycleS: { text: 'Cycle with changing racks, without hold', unit: 's', min: 20, max: 1200 },
};

const balance = {
  text: 'Balance of energy over a cycle: the booster gives what the rinse takes; kW = gph · rise · 8.33 / 3412 solved for time',
  documents: ['arithmetic'],
  confidence: 'geometry',
} as const;
const unprinted = 'No document at hand works out a hold; the published booster sizes are met where the hold begins.';

const at = (supplyF: number, kW: number): RinseHoldInputs => ({
  perCycleM3: toSI(0.89, 'gal'),
  supplyC: toSI(supplyF, 'F'),
  rinseC: toSI(180, 'F'),
  boosterW: 1000 * kW,
  efficiency: 1,
  cycleS: 60,
});

export const rinseHoldRecord: FormulaRecord<RinseHoldInputs> = {
  id: 'rinse-hold',
  title: 'Rinse hold',
  formula: 'hold = V · ρ c · (rinse − supply) / (P · η) − cycle, at least 0',
  inputs,
  result: { text: 'Hold in each cycle', unit: 's', min: 0, max: 150_000 },
  source: [balance],
  unprinted,
  examples: [
    { kind: 'regression', from: '0.89 gal from 140 °F by 6 kW, 60 s: none', inputs: at(140, 6), result: 0, tolerance: 0 },
    {
      kind: 'regression',
      from: '0.89 gal from 110 °F by 6 kW, 60 s: ready after 91.3 s',
      inputs: at(110, 6),
      result: 31.3,
      tolerance: 0.05,
    },
  ],
};

export const heldCycleRecord: FormulaRecord<RinseHoldInputs> = {
  id: 'held-cycle',
  title: 'Cycle with rinse hold',
  formula: 'cycle + hold = max(cycle, V · ρ c · (rinse − supply) / (P · η))',
  inputs,
  result: { text: 'Cycle', unit: 's', min: 20, max: 150_000 },
  source: [balance],
  unprinted,
  examples: [
    { kind: 'regression', from: '0.89 gal from 140 °F by 6 kW: the 60 s of the cycle', inputs: at(140, 6), result: 60, tolerance: 0 },
    { kind: 'regression', from: '0.89 gal from 110 °F by 6 kW: 91.3 s', inputs: at(110, 6), result: 91.3, tolerance: 0.05 },
  ],
};

export const heldRackRateRecord: FormulaRecord<RinseHoldInputs & { racksPerCycle: number }> = {
  id: 'held-rack-rate',
  title: 'Racks an hour with rinse hold',
  formula: 'RPH = 3600 · NR / (cycle + hold)',
  inputs: { ...inputs, racksPerCycle: { text: 'Racks in one cycle', unit: 'count', min: 1, max: 4 } },
  result: { text: 'Racks an hour', unit: '1/h', min: 0, max: 720 },
  source: [balance, { text: 'NSF/ANSI 3 listings, preface: RPH = 3600 · NR / TC', documents: ['nsf-ansi-3'], confidence: 'read' }],
  unprinted,
  examples: [
    { kind: 'regression', from: 'no hold: 60 racks/h', inputs: { ...at(140, 6), racksPerCycle: 1 }, result: 60, tolerance: 1e-9 },
    {
      kind: 'regression',
      from: 'ready after 91.3 s: 39.4 racks/h',
      inputs: { ...at(110, 6), racksPerCycle: 1 },
      result: 39.42,
      tolerance: 0.03,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 940,
    formulas: [formula(rinseHoldRecord, rinseHold), formula(heldCycleRecord, heldCycle), formula(heldRackRateRecord, heldRackRate)],
  },
];
