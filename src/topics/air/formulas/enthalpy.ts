import { type Entries, type FormulaRecord, type FormulaResult, type FormulaSource, findOutOfRange, formula } from '../../../rules';
import { handbook, ratio, temperature } from './support/notes';

export interface EnthalpyInputs {
  temperatureC: number;
  humidityRatio: number;
}

/** Enthalpy of moist air in J to a kg of dry air, from 0 at dry air of 0 °C. */
export function moistEnthalpy(inputs: EnthalpyInputs): FormulaResult {
  const refusal = findOutOfRange(moistEnthalpyRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { temperatureC: t, humidityRatio: w } = inputs;
  return { ok: true, value: DRY_HEAT * t + w * vapourEnthalpy(t) };
}

/** Heat in J/kg that vapour brings into a room's air at a temperature. */
export const vapourEnthalpy = (temperatureC: number): number => VAPOUR_AT_ZERO + VAPOUR_HEAT * temperatureC;

/** Specific heats of dry air and of vapour, J/(kg·K), and the enthalpy of vapour at 0 °C, J/kg. */
export const DRY_HEAT = 1006;
export const VAPOUR_HEAT = 1860;
const VAPOUR_AT_ZERO = 2_501_000;

export interface TemperatureInputs {
  enthalpyJkg: number;
  humidityRatio: number;
}

/** Temperature in °C of moist air of an enthalpy: the other way about. */
export function temperatureOfEnthalpy(inputs: TemperatureInputs): FormulaResult {
  const refusal = findOutOfRange(temperatureOfEnthalpyRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { enthalpyJkg: h, humidityRatio: w } = inputs;
  return { ok: true, value: (h - w * VAPOUR_AT_ZERO) / (DRY_HEAT + w * VAPOUR_HEAT) };
}

const cases = 'PsychroLib, tests of moist air: 30 °C, W 0.02';
const source: FormulaSource[] = [{ text: handbook('equation 30'), documents: ['ashrae-fundamentals-2017'], confidence: 'read' }];

export const moistEnthalpyRecord: FormulaRecord<EnthalpyInputs> = {
  id: 'moist-air-enthalpy',
  title: 'Enthalpy of moist air',
  formula: 'h = 1.006 t + W (2501 + 1.86 t)',
  inputs: { temperatureC: temperature('Temperature'), humidityRatio: ratio('Vapour to dry air') },
  result: { text: 'Enthalpy to a kg of dry air', unit: 'J/kg', min: -60_000, max: 2.8e6 },
  source,
  examples: [
    { kind: 'source', from: cases, inputs: { temperatureC: 30, humidityRatio: 0.02 }, result: 81_316, tolerance: 1 },
    {
      kind: 'source',
      from: handbook('example 1'),
      inputs: { temperatureC: 40, humidityRatio: 0.0065 },
      result: 56_700,
      tolerance: 350,
    },
  ],
};

export const temperatureOfEnthalpyRecord: FormulaRecord<TemperatureInputs> = {
  id: 'temperature-of-enthalpy',
  title: 'Temperature from enthalpy',
  formula: 't = (h − 2501 W) / (1.006 + 1.86 W)',
  inputs: {
    enthalpyJkg: { text: 'Enthalpy to a kg of dry air', unit: 'J/kg', min: -50_000, max: 2.8e6 },
    humidityRatio: ratio('Vapour to dry air'),
  },
  result: { text: 'Temperature', unit: 'C', min: -900, max: 2800 },
  source,
  examples: [{ kind: 'source', from: cases, inputs: { enthalpyJkg: 81_316, humidityRatio: 0.02 }, result: 30, tolerance: 1e-3 }],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 460, formulas: [formula(moistEnthalpyRecord, moistEnthalpy), formula(temperatureOfEnthalpyRecord, temperatureOfEnthalpy)] },
];
