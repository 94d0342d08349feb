import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  type FormulaSource,
  findOutOfRange,
  formula,
  type Refusal,
} from '../../../rules';
import { saturatedPa } from './saturationPressure';
import { AT_500_M, airPressure, BELOW_BOILING, findBoiling, handbook, ratio, SEA_LEVEL, share, temperature, vapour } from './support/notes';

export interface VapourInputs {
  vapourPa: number;
  pressurePa: number;
}

/** Humidity ratio, kg of vapour to a kg of dry air, of air that holds vapour of such a pressure. */
export function humidityRatio(inputs: VapourInputs): FormulaResult {
  const refusal = findOutOfRange(humidityRatioRecord, inputs) ?? findBoiling(humidityRatioRecord, inputs.vapourPa, inputs.pressurePa);
  return refusal === null ? { ok: true, value: ratioOf(inputs.vapourPa, inputs.pressurePa) } : { ok: false, refusal };
}

/** The same without its guard. */
export const ratioOf = (vapourPa: number, pressurePa: number): number => (MASS_RATIO * vapourPa) / (pressurePa - vapourPa);

/** Molar mass of water over that of dry air. */
const MASS_RATIO = 0.621945;

export interface RelativeHumidityInputs {
  temperatureC: number;
  relativeHumidity: number;
  pressurePa: number;
}

/** Humidity ratio from temperature and relative humidity; 1 is saturated. */
export function humidityRatioOfRelative(inputs: RelativeHumidityInputs): FormulaResult {
  const refusal = findOutOfRange(humidityRatioOfRelativeRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return humidityRatio({ vapourPa: inputs.relativeHumidity * saturatedPa(inputs.temperatureC), pressurePa: inputs.pressurePa });
}

export interface RatioInputs {
  humidityRatio: number;
  pressurePa: number;
}

/** Pressure in Pa of the vapour in air of a humidity ratio: the other way about. */
export function vapourPressure(inputs: RatioInputs): FormulaResult {
  const refusal = findOutOfRange(vapourPressureRecord, inputs);
  return refusal === null ? { ok: true, value: vapourOf(inputs.humidityRatio, inputs.pressurePa) } : { ok: false, refusal };
}

/** The same without its guard. */
export const vapourOf = (humidity: number, pressurePa: number): number => (pressurePa * humidity) / (MASS_RATIO + humidity);

export interface StateInputs extends RatioInputs {
  temperatureC: number;
}

export const AT_MOST_SATURATED = 'air holds at most what saturates it';

/** Why air of this state would be fog; null when it is not. A part in 10⁹ is let pass, so that saturated air counts as air. */
export function findFog(
  record: { id: string; title: string },
  { temperatureC, humidityRatio: humidity, pressurePa }: StateInputs,
): Refusal | null {
  const relative = vapourOf(humidity, pressurePa) / saturatedPa(temperatureC);
  if (relative <= 1 + 1e-9) return null;
  return createRefusal(record, 'above-saturation', { humidityRatio: humidity, temperatureC, relativeHumidity: relative });
}

/** Relative humidity, 0 to 1. Refuses air that holds more than saturates it. */
export function relativeHumidity(inputs: StateInputs): FormulaResult {
  const refusal = findOutOfRange(relativeHumidityRecord, inputs) ?? findFog(relativeHumidityRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: Math.min(1, vapourOf(inputs.humidityRatio, inputs.pressurePa) / saturatedPa(inputs.temperatureC)) };
}

const cases = 'PsychroLib, tests of humidity ratio and vapour pressure';
const table = handbook('Table 2: ratio of saturated air');
const first = handbook('example 1');
const equation: FormulaSource[] = [{ text: handbook('equation 20'), documents: ['ashrae-fundamentals-2017'], confidence: 'read' }];

export const humidityRatioRecord: FormulaRecord<VapourInputs> = {
  id: 'humidity-ratio',
  title: 'Humidity ratio',
  formula: 'W = 0.621945 p_w / (P − p_w)',
  inputs: { vapourPa: vapour, pressurePa: airPressure },
  result: { text: 'Vapour to dry air', unit: 'kg/kg', min: 0, max: Number.POSITIVE_INFINITY },
  source: equation,
  examples: [
    { kind: 'source', from: cases, inputs: { vapourPa: 3169.7, pressurePa: AT_500_M }, result: 0.0213603998047487, tolerance: 2e-8 },
  ],
  also: BELOW_BOILING,
};

export const humidityRatioOfRelativeRecord: FormulaRecord<RelativeHumidityInputs> = {
  id: 'humidity-ratio-of-relative',
  title: 'Humidity ratio from relative humidity',
  formula: 'W = 0.621945 φ p_ws / (P − φ p_ws)',
  inputs: { temperatureC: temperature('Temperature'), relativeHumidity: share('Relative humidity'), pressurePa: airPressure },
  result: { text: 'Vapour to dry air', unit: 'kg/kg', min: 0, max: Number.POSITIVE_INFINITY },
  source: equation,
  examples: [
    {
      kind: 'source',
      from: table,
      inputs: { temperatureC: 25, relativeHumidity: 1, pressurePa: SEA_LEVEL },
      result: 0.020173,
      tolerance: 0.0001,
    },
    {
      kind: 'source',
      from: table,
      inputs: { temperatureC: 50, relativeHumidity: 1, pressurePa: SEA_LEVEL },
      result: 0.086863,
      tolerance: 0.00087,
    },
  ],
  also: BELOW_BOILING,
};

export const vapourPressureRecord: FormulaRecord<RatioInputs> = {
  id: 'vapour-pressure',
  title: 'Pressure of the vapour in air',
  formula: 'p_w = P W / (0.621945 + W)',
  inputs: { humidityRatio: ratio('Vapour to dry air'), pressurePa: airPressure },
  result: { text: 'Pressure of the vapour', unit: 'Pa', min: 0, max: 120_000 },
  source: equation,
  examples: [
    { kind: 'source', from: cases, inputs: { humidityRatio: 0.0213603998047487, pressurePa: AT_500_M }, result: 3169.7, tolerance: 1e-4 },
  ],
};

export const relativeHumidityRecord: FormulaRecord<StateInputs> = {
  id: 'relative-humidity',
  title: 'Relative humidity',
  formula: 'φ = p_w / p_ws(t)',
  inputs: { temperatureC: temperature('Temperature'), humidityRatio: ratio('Vapour to dry air'), pressurePa: airPressure },
  result: { text: 'Relative humidity', unit: 'share', min: 0, max: 1 },
  source: [{ text: handbook('equations 12 and 20'), documents: ['ashrae-fundamentals-2017'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: first,
      inputs: { temperatureC: 40, humidityRatio: 0.0065, pressurePa: SEA_LEVEL },
      result: 0.14,
      tolerance: 0.01,
    },
  ],
  also: AT_MOST_SATURATED,
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 390, formulas: [formula(humidityRatioRecord, humidityRatio), formula(humidityRatioOfRelativeRecord, humidityRatioOfRelative)] },
  { order: 420, formulas: [formula(vapourPressureRecord, vapourPressure), formula(relativeHumidityRecord, relativeHumidity)] },
];
