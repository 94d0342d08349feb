import {
  bisect,
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  type FormulaSource,
  findOutOfRange,
  formula,
} from '../../../rules';
import { AT_MOST_SATURATED, findFog, ratioOf, type StateInputs } from './humidityRatio';
import { saturatedPa } from './saturationPressure';
import { AT_500_M, airPressure, handbook, ratio, SEA_LEVEL, temperature } from './support/notes';

export interface WetBulbInputs {
  temperatureC: number;
  wetBulbC: number;
  pressurePa: number;
}

const DRY_AND_WET = 'a wet bulb is between dry air and the dry bulb';

/** Humidity ratio from dry and wet bulb. */
export function humidityRatioOfWetBulb(inputs: WetBulbInputs): FormulaResult {
  const refusal = findOutOfRange(humidityRatioOfWetBulbRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const humidity = ratioAtWetBulb(inputs);
  const isReal = inputs.wetBulbC <= inputs.temperatureC && saturatedPa(inputs.wetBulbC) < inputs.pressurePa && humidity >= 0;
  if (isReal) return { ok: true, value: humidity };
  const about = { input: 'wetBulbC', value: inputs.wetBulbC };
  return { ok: false, refusal: createRefusal(humidityRatioOfWetBulbRecord, 'wet-bulb-not-between', {}, about) };
}

function ratioAtWetBulb({ temperatureC: t, wetBulbC: wet, pressurePa }: WetBulbInputs): number {
  const saturated = ratioOf(saturatedPa(wet), pressurePa);
  if (wet >= 0) return ((2501 - 2.326 * wet) * saturated - 1.006 * (t - wet)) / (2501 + 1.86 * t - 4.186 * wet);
  return ((2830 - 0.24 * wet) * saturated - 1.006 * (t - wet)) / (2830 + 1.86 * t - 2.1 * wet);
}

/** Wet-bulb temperature in °C of air of a temperature and a humidity ratio. */
export function wetBulb(inputs: StateInputs): FormulaResult {
  const refusal = findOutOfRange(wetBulbRecord, inputs) ?? findFog(wetBulbRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { temperatureC, humidityRatio, pressurePa } = inputs;
  const excess = (wetBulbC: number) => ratioAtWetBulb({ temperatureC, wetBulbC, pressurePa }) - humidityRatio;
  return { ok: true, value: bisect(excess, -100, Math.min(temperatureC, boilingPoint(pressurePa))) };
}

/** No wet bulb lies above it: there the ratio of saturated air grows beyond all bounds. */
const boilingPoint = (pressurePa: number) => bisect((t) => saturatedPa(t) - pressurePa, 0, 200) - 1e-9;

const cases = 'PsychroLib, tests of wet bulb';
const first = handbook('example 1');
const equation: FormulaSource[] = [{ text: handbook('equations 33 and 35'), documents: ['ashrae-fundamentals-2017'], confidence: 'read' }];

export const humidityRatioOfWetBulbRecord: FormulaRecord<WetBulbInputs> = {
  id: 'humidity-ratio-of-wet-bulb',
  title: 'Humidity ratio from wet bulb',
  formula:
    'W = [ (2501 − 2.326 t*) W*_s − 1.006 (t − t*) ] / (2501 + 1.86 t − 4.186 t*); over ice 2830 − 0.24 t* and 2830 + 1.86 t − 2.1 t*',
  inputs: { temperatureC: temperature('Temperature'), wetBulbC: temperature('Wet bulb'), pressurePa: airPressure },
  result: { text: 'Vapour to dry air', unit: 'kg/kg', min: 0, max: Number.POSITIVE_INFINITY },
  source: equation,
  examples: [
    {
      kind: 'source',
      from: `${cases}`,
      inputs: { temperatureC: 30, wetBulbC: 25, pressurePa: AT_500_M },
      result: 0.0192281274241096,
      tolerance: 6e-6,
    },
    { kind: 'source', from: first, inputs: { temperatureC: 40, wetBulbC: 20, pressurePa: SEA_LEVEL }, result: 0.0065, tolerance: 1e-4 },
  ],
  also: DRY_AND_WET,
};

export const wetBulbRecord: FormulaRecord<StateInputs> = {
  id: 'wet-bulb',
  title: 'Wet bulb',
  formula: 'W(t, t*) = W, solved by halving',
  inputs: { temperatureC: temperature('Temperature'), humidityRatio: ratio('Vapour to dry air'), pressurePa: airPressure },
  result: { text: 'Wet bulb', unit: 'C', min: -51, max: 100 },
  source: equation,
  examples: [
    {
      kind: 'source',
      from: `${cases}`,
      inputs: { temperatureC: 30, humidityRatio: 0.0192281274241096, pressurePa: AT_500_M },
      result: 25,
      tolerance: 5e-3,
    },
  ],
  also: AT_MOST_SATURATED,
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 410, formulas: [formula(humidityRatioOfWetBulbRecord, humidityRatioOfWetBulb)] },
  { order: 450, formulas: [formula(wetBulbRecord, wetBulb)] },
];
