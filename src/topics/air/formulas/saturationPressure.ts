import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { handbook } from './support/notes';
import { KELVIN } from './support/standardAir';

export interface SaturationPressureInputs {
  temperatureC: number;
}

/** Pressure in Pa of vapour in balance with ice up to the triple point of water, with water above it. */
export function saturationPressure(inputs: SaturationPressureInputs): FormulaResult {
  const refusal = findOutOfRange(saturationPressureRecord, inputs);
  return refusal === null ? { ok: true, value: saturatedPa(inputs.temperatureC) } : { ok: false, refusal };
}

/** The same without its guard, for the searches of the other formulas. Lies on one curve that rises without a break. */
export function saturatedPa(temperatureC: number): number {
  const t = temperatureC + KELVIN;
  return Math.exp(temperatureC <= TRIPLE_POINT_C ? overIce(t) : overWater(t));
}

const overIce = (t: number) =>
  -5674.5359 / t +
  6.3925247 -
  9.677843e-3 * t +
  6.2215701e-7 * t ** 2 +
  2.0747825e-9 * t ** 3 -
  9.484024e-13 * t ** 4 +
  4.1635019 * Math.log(t);

const overWater = (t: number) =>
  -5800.2206 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t ** 2 - 1.4452093e-8 * t ** 3 + 6.5459673 * Math.log(t);

/** Ice gives way to water here and not at 0 °C, or the curve would have a step: ASHRAE Fundamentals 2017, ch. 1, as in PsychroLib. */
export const TRIPLE_POINT_C = 0.01;

const table = handbook('Table 3');

export const saturationPressureRecord: FormulaRecord<SaturationPressureInputs> = {
  id: 'saturation-pressure',
  title: 'Pressure of saturated vapour',
  formula: 'ln p_ws = −5800.2206/T + 1.3914993 − 0.048640239 T + 4.1764768·10^−5 T² − 1.4452093·10^−8 T³ + 6.5459673 ln T above 0.01 °C',
  inputs: { temperatureC: { text: 'Temperature', unit: 'C', min: -100, max: 200 } },
  result: { text: 'Pressure of saturated vapour', unit: 'Pa', min: 0.001, max: 1.6e6 },
  source: [{ text: handbook('equations 5 and 6'), documents: ['ashrae-fundamentals-2017'], confidence: 'read' }],
  examples: [
    { kind: 'source', from: table, inputs: { temperatureC: 25 }, result: 3169.7, tolerance: 0.95 },
    { kind: 'source', from: table, inputs: { temperatureC: 50 }, result: 12_351.3, tolerance: 3.7 },
    { kind: 'source', from: table, inputs: { temperatureC: 100 }, result: 101_418, tolerance: 30 },
    { kind: 'source', from: table, inputs: { temperatureC: -5 }, result: 401.74, tolerance: 0.12 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 380, formulas: [formula(saturationPressureRecord, saturationPressure)] }];
