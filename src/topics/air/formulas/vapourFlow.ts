import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';
import { vapourHeat } from './support/airHeat';

/** Heat of a pound of vapour as the machine tables are turned into water: 1061 Btu. It takes the most vapour for a heat. */
export const VAPOUR_JKG = toSI(1061, 'Btu/lb');

export interface VapourFlowInputs {
  latentW: number;
  vapourJkg: number;
}

/** Vapour in kg/s that a latent heat stands for. */
export function vapourFlow(inputs: VapourFlowInputs): FormulaResult {
  const refusal = findOutOfRange(vapourFlowRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.latentW / inputs.vapourJkg } : { ok: false, refusal };
}

const handbook = 'ASHRAE Fundamentals 2021, 16.12, as restated: vapour brings 1061 Btu/lb + 0.444 t';

export const vapourFlowRecord: FormulaRecord<VapourFlowInputs> = {
  id: 'vapour-flow',
  title: 'Vapour of a latent heat',
  formula: 'm = q_l / h_v',
  inputs: { latentW: { text: 'Latent heat', unit: 'W', min: 0, max: 1e6 }, vapourJkg: vapourHeat },
  result: { text: 'Vapour', unit: 'kg/s', min: 0, max: 0.5 },
  source: [{ text: handbook, documents: ['ashrae-fundamentals-2021'], confidence: 'secondary' }],
  examples: [
    {
      kind: 'source',
      from: `${handbook}: 1061 Btu/h are a pound an hour`,
      inputs: { latentW: toSI(1061, 'Btu/h'), vapourJkg: VAPOUR_JKG },
      result: toSI(1, 'lb') / 3600,
      tolerance: 1e-12,
    },
    {
      kind: 'regression',
      from: '2790 Btu/h are 2.6296 lb/h',
      inputs: { latentW: toSI(2790, 'Btu/h'), vapourJkg: VAPOUR_JKG },
      result: toSI(2.6296, 'lb') / 3600,
      tolerance: 1e-8,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 560, formulas: [formula(vapourFlowRecord, vapourFlow)] }];
