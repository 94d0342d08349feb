import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { KELVIN } from '../../air';

export interface ViscosityInputs {
  temperatureC: number;
}

/** Dynamic viscosity of dry air in Pa·s. Warm moist air is a few per cent thinner, which moves a friction factor by less than 1 %. */
export function airViscosity(inputs: ViscosityInputs): FormulaResult {
  const refusal = findOutOfRange(airViscosityRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const kelvin = inputs.temperatureC + KELVIN;
  return { ok: true, value: (1.458e-6 * kelvin ** 1.5) / (kelvin + 110.4) };
}

const atmosphere = 'U.S. Standard Atmosphere 1976, dynamic viscosity';

export const airViscosityRecord: FormulaRecord<ViscosityInputs> = {
  id: 'air-viscosity',
  title: 'Viscosity of air',
  formula: 'μ = 1.458·10^−6 T^1.5 / (T + 110.4), T in kelvin',
  inputs: { temperatureC: { text: 'Temperature', unit: 'C', min: -40, max: 100 } },
  result: { text: 'Dynamic viscosity', unit: 'Pa·s', min: 1.4e-5, max: 2.3e-5 },
  source: [
    { text: `${atmosphere}, as coded in public atmosphere libraries`, documents: ['standard-atmosphere-1976'], confidence: 'secondary' },
  ],
  examples: [
    { kind: 'source', from: `${atmosphere}: 1.789·10^−5 at 15 °C`, inputs: { temperatureC: 15 }, result: 1.789e-5, tolerance: 5e-9 },
    { kind: 'regression', from: '50 °C', inputs: { temperatureC: 50 }, result: 1.9532e-5, tolerance: 1e-8 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 220, formulas: [formula(airViscosityRecord, airViscosity)] }];
