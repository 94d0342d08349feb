import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';
import { FIXTURE_DEMAND_SOURCE } from './fixtureDemand';

export interface HotWaterDemandInputs {
  /** How many of each fixture stand in the room. */
  units: readonly number[];
  /** What one of each takes, in the same order. */
  eachM3S: readonly number[];
  share: number;
}

/** Hot water wanted in an hour of service, as a steady flow in m³/s: every fixture counted, times the share a heater is sized for. */
export function hotWaterDemand(inputs: HotWaterDemandInputs): FormulaResult {
  const refusal = findOutOfRange(hotWaterDemandRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { units, eachM3S, share } = inputs;
  if (units.length !== eachM3S.length)
    return {
      ok: false,
      refusal: createRefusal(hotWaterDemandRecord, 'lists-differ-in-length', { units: units.length, flows: eachM3S.length }),
    };
  return { ok: true, value: share * units.reduce((sum, count, i) => sum + count * (eachM3S[i] ?? 0), 0) };
}

const form = 'San Joaquin County CA, form EHD 16-01, a filing';
const gph = (...values: number[]) => values.map((value) => toSI(value, 'gph'));

export const hotWaterDemandRecord: FormulaRecord<HotWaterDemandInputs> = {
  id: 'hot-water-demand',
  title: 'Hot-water demand',
  formula: 'V̇ = share · Σ (units · each)',
  inputs: {
    units: { text: 'How many of each fixture', unit: 'count', min: 0, max: 100 },
    eachM3S: { text: 'Hot water of one of each', unit: 'm3/s', min: 0, max: 0.001 },
    share: {
      text: 'Share that the heater is sized for: 1 with three meals a day, 0.9 moderate, 0.8 single-service',
      unit: 'ratio',
      min: 0.5,
      max: 1,
    },
  },
  result: { text: 'Hot water wanted', unit: 'm3/s', min: 0, max: Number.POSITIVE_INFINITY },
  source: [
    FIXTURE_DEMAND_SOURCE,
    { text: 'San Joaquin County CA, form EHD 16-01, rev. 7/5/17', documents: ['san-joaquin-ehd-16-01'], confidence: 'read' },
  ],
  examples: [
    {
      kind: 'source',
      from: `${form}: nine lines, 265 gph in all`,
      inputs: { units: [5, 3, 1, 2, 1, 1, 1, 1, 1], eachM3S: gph(5, 5, 45, 30, 35, 10, 35, 30, 10), share: 1 },
      result: toSI(265, 'gph'),
      tolerance: 1e-12,
    },
    {
      kind: 'source',
      from: `${form}: five lines, 135 gph in all`,
      inputs: { units: [2, 1, 1, 2, 1], eachM3S: gph(5, 20, 60, 20, 5), share: 1 },
      result: toSI(135, 'gph'),
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: 'the second at 90 %',
      inputs: { units: [2, 1, 1, 2, 1], eachM3S: gph(5, 20, 60, 20, 5), share: 0.9 },
      result: toSI(121.5, 'gph'),
      tolerance: 1e-12,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 810, formulas: [formula(hotWaterDemandRecord, hotWaterDemand)] }];
