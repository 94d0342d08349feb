import { type Entries, type FormulaRecord, type FormulaResult, type FormulaSource, findOutOfRange, formula } from '../../../rules';
import type { StateInputs } from './humidityRatio';
import { AT_500_M, airPressure, handbook, ratio, SEA_LEVEL, temperature } from './support/notes';
import { KELVIN } from './support/standardAir';

/** Volume of moist air in m³ to a kg of dry air. */
export function moistVolume(inputs: StateInputs): FormulaResult {
  const refusal = findOutOfRange(moistVolumeRecord, inputs);
  return refusal === null ? { ok: true, value: volumeOf(inputs) } : { ok: false, refusal };
}

const volumeOf = ({ temperatureC, humidityRatio, pressurePa }: StateInputs) =>
  (DRY_GAS * (temperatureC + KELVIN) * (1 + MOLAR_RATIO * humidityRatio)) / pressurePa;

/** Gas constant of dry air, J/(kg·K), and molar mass of dry air over that of water. */
const DRY_GAS = 287.042;
const MOLAR_RATIO = 1.607858;

/** Density of moist air in kg/m³, its vapour included. Warm moist air is lighter, and a fan moves less of it. */
export function moistDensity(inputs: StateInputs): FormulaResult {
  const refusal = findOutOfRange(moistDensityRecord, inputs);
  return refusal === null ? { ok: true, value: (1 + inputs.humidityRatio) / volumeOf(inputs) } : { ok: false, refusal };
}

const cases = 'PsychroLib, tests of moist air';
const case30: StateInputs = { temperatureC: 30, humidityRatio: 0.02, pressurePa: AT_500_M };
const inputs = { temperatureC: temperature('Temperature'), humidityRatio: ratio('Vapour to dry air'), pressurePa: airPressure };
const source: FormulaSource[] = [{ text: handbook('equation 26'), documents: ['ashrae-fundamentals-2017'], confidence: 'read' }];

export const moistVolumeRecord: FormulaRecord<StateInputs> = {
  id: 'moist-air-volume',
  title: 'Volume of moist air',
  formula: 'v = 287.042 T (1 + 1.607858 W) / P',
  inputs,
  result: { text: 'Volume to a kg of dry air', unit: 'm3/kg', min: 0.5, max: 5 },
  source,
  examples: [
    { kind: 'source', from: cases, inputs: case30, result: 0.940855374352943, tolerance: 0.0003 },
    {
      kind: 'source',
      from: handbook('example 1'),
      inputs: { temperatureC: 40, humidityRatio: 0.0065, pressurePa: SEA_LEVEL },
      result: 0.896,
      tolerance: 0.009,
    },
  ],
};

export const moistDensityRecord: FormulaRecord<StateInputs> = {
  id: 'moist-air-density',
  title: 'Density of moist air',
  formula: 'ρ = (1 + W) / v',
  inputs,
  result: { text: 'Density', unit: 'kg/m3', min: 0.3, max: 2 },
  source,
  examples: [{ kind: 'source', from: cases, inputs: case30, result: 1.08411986348219, tolerance: 0.0003 }],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 480, formulas: [formula(moistVolumeRecord, moistVolume), formula(moistDensityRecord, moistDensity)] },
];
