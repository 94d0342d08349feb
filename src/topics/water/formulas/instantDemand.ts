import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';
import { FIXTURE_DEMAND_SOURCE, INSTANT_HEATER_FLOW } from './fixtureDemand';

export interface InstantDemandInputs {
  sinks: number;
  /** Rinse of each machine that is fed hot. */
  rinsesM3S: readonly number[];
}

/** Flow in m³/s that a heater without a store must warm at once: 2 gpm to each sink, and the rinses that it feeds. */
export function instantDemand(inputs: InstantDemandInputs): FormulaResult {
  const refusal = findOutOfRange(instantDemandRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { sinks, rinsesM3S } = inputs;
  return { ok: true, value: rinsesM3S.reduce((sum, rinse) => sum + rinse, sinks * (INSTANT_HEATER_FLOW.min ?? Number.NaN)) };
}

const table = 'California Conference of Directors of Environmental Health, hot-water demand table';

export const instantDemandRecord: FormulaRecord<InstantDemandInputs> = {
  id: 'instant-demand',
  title: 'Hot water at once, without a store',
  formula: 'V̇ = sinks · 2 gpm + Σ rinses',
  inputs: {
    sinks: { text: 'Sinks that take hot water', unit: 'count', min: 0, max: 100 },
    rinsesM3S: { text: 'Flow of the rinse of a machine that is fed hot', unit: 'm3/s', min: 0, max: 0.034 },
  },
  result: { text: 'Hot water wanted at once', unit: 'm3/s', min: 0, max: Number.POSITIVE_INFINITY },
  source: [
    FIXTURE_DEMAND_SOURCE,
    {
      text: 'That a machine draws its rinse at the same time is an assumption; the table leaves it to its sheet',
      documents: ['common-practice'],
      confidence: 'practice',
    },
  ],
  examples: [
    {
      kind: 'source',
      from: `${table}: one sink, 2 gpm`,
      inputs: { sinks: 1, rinsesM3S: [] },
      result: toSI(2, 'gpm'),
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: 'three sinks and a rinse of 4.5 gpm: 10.5 gpm',
      inputs: { sinks: 3, rinsesM3S: [toSI(4.5, 'gpm')] },
      result: toSI(10.5, 'gpm'),
      tolerance: 1e-12,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 830, formulas: [formula(instantDemandRecord, instantDemand)] }];
