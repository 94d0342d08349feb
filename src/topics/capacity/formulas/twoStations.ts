import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface TwoStationInputs {
  firstPerH: number;
  secondPerH: number;
  /** Racks that can stand between the two. */
  buffer: number;
}

/**
 * Racks an hour through two stations of chance times with places between them, both always busy if they can be:
 * a person who scraps and a machine. With fixed times nothing is lost, so this is the worse case.
 */
export function twoStationRate(inputs: TwoStationInputs): FormulaResult {
  const refusal = findOutOfRange(twoStationRateRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const about = { input: 'buffer', value: inputs.buffer };
  if (!Number.isInteger(inputs.buffer)) return { ok: false, refusal: createRefusal(twoStationRateRecord, 'not-whole', {}, about) };
  return { ok: true, value: inputs.secondPerH * (1 - idleShare(inputs)) };
}

/** Part of the time in which the second has nothing to do: 1 / Σ rⁿ, n from 0 to buffer + 2, r the ratio of the rates. */
function idleShare({ firstPerH, secondPerH, buffer }: TwoStationInputs): number {
  const ratio = firstPerH / secondPerH;
  let sum = 0;
  for (let n = 0; n <= buffer + 2; n++) sum += ratio ** n;
  return 1 / sum;
}

export const twoStationRateRecord: FormulaRecord<TwoStationInputs> = {
  id: 'two-station-rate',
  title: 'Racks an hour through two stations',
  formula: 'TH = μ₂ (1 − 1 / Σ r^n), r = μ₁ / μ₂, n from 0 to N + 2; equal rates: μ (N + 2) / (N + 3)',
  inputs: {
    firstPerH: { text: 'Rate of the first alone', unit: '1/h', min: 1, max: 1000 },
    secondPerH: { text: 'Rate of the second alone', unit: '1/h', min: 1, max: 1000 },
    buffer: { text: 'Racks that can stand between', unit: 'count', min: 0, max: 50 },
  },
  result: { text: 'Racks an hour', unit: '1/h', min: 0, max: 1000 },
  source: [
    { text: 'Birth-death chain with blocking after service, solved exactly', documents: ['queueing-texts'], confidence: 'geometry' },
  ],
  unprinted: 'Worked out from the chain; no table is at hand.',
  examples: [
    {
      kind: 'regression',
      from: 'equal rates, 2 places: 4/5',
      inputs: { firstPerH: 60, secondPerH: 60, buffer: 2 },
      result: 48,
      tolerance: 1e-9,
    },
    {
      kind: 'regression',
      from: '60 and 40 an hour, 5 places',
      inputs: { firstPerH: 60, secondPerH: 40, buffer: 5 },
      result: 39.187946,
      tolerance: 1e-6,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 730, formulas: [formula(twoStationRateRecord, twoStationRate)] }];
