import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';
import { STANDARD_DENSITY } from './support/standardAir';

export interface RisingHumidityInputs {
  vapourKgS: number;
  airflowM3s: number;
  densityKgM3: number;
  supplyRatio: number;
  /** Of the room when the machine begins. */
  firstRatio: number;
  volumeM3: number;
  seconds: number;
}

/**
 * Humidity ratio of a well-mixed room some time after the machine begins. Walls and ware take up some vapour at
 * first, so this rises faster than the room does.
 */
export function risingHumidity(inputs: RisingHumidityInputs): FormulaResult {
  const refusal = findOutOfRange(risingHumidityRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { vapourKgS, airflowM3s, densityKgM3, supplyRatio, firstRatio, volumeM3, seconds } = inputs;
  const left = Math.exp((-airflowM3s / volumeM3) * seconds);
  const steady = supplyRatio + vapourKgS / (densityKgM3 * airflowM3s);
  return { ok: true, value: steady + (firstRatio - steady) * left };
}

const ratio = (text: string) => ({ text, unit: 'kg/kg', min: 0, max: 0.2 }) as const;
const table = 'Room concentration, public table: one air change an hour, 40 min, 0.4866 of the source';

export const risingHumidityRecord: FormulaRecord<RisingHumidityInputs> = {
  id: 'rising-humidity',
  title: 'Rising humidity of a room',
  formula: 'W = W_∞ + (W₁ − W_∞) e^(−Q t/V), W_∞ = W_s + m/(ρ Q)',
  inputs: {
    vapourKgS: { text: 'Vapour into the room', unit: 'kg/s', min: 0, max: 0.1 },
    airflowM3s: { text: 'Airflow through the room', unit: 'm3/s', min: 0.005, max: 100 },
    densityKgM3: { text: 'Dry air to a cubic metre', unit: 'kg/m3', min: 0.3, max: 2 },
    supplyRatio: ratio('Vapour to dry air of the supply'),
    firstRatio: ratio('Vapour to dry air of the room at the beginning'),
    volumeM3: { text: 'Volume of the room', unit: 'm3', min: 1, max: 1e5 },
    seconds: { text: 'Time since the beginning', unit: 's', min: 0, max: 1e6 },
  },
  result: { text: 'Vapour to dry air of the room', unit: 'kg/kg', min: 0, max: Number.POSITIVE_INFINITY },
  source: [{ text: 'Room concentration with a source and ventilation', documents: ['room-concentration'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: table,
      inputs: { vapourKgS: 0.01, airflowM3s: 0.1, densityKgM3: 1, supplyRatio: 0, firstRatio: 0, volumeM3: 360, seconds: 2400 },
      result: 0.1 * 0.4866,
      tolerance: 1e-5,
    },
    {
      kind: 'regression',
      from: 'after a long while that of',
      inputs: {
        vapourKgS: toSI(2.6296, 'lb') / 3600,
        airflowM3s: toSI(400, 'cfm'),
        densityKgM3: STANDARD_DENSITY,
        supplyRatio: 0.0092357,
        firstRatio: 0.0092357,
        volumeM3: toSI(3360, 'ft3'),
        seconds: 1e5,
      },
      result: 0.0106966,
      tolerance: 1e-7,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 630, formulas: [formula(risingHumidityRecord, risingHumidity)] }];
