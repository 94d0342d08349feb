import { toSI } from '../../../units';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';
import { DRY_HEAT, VAPOUR_HEAT } from '../moist';
import { STANDARD_DENSITY } from '../standardAir';

interface AirFlow {
  airflowM3s: number;
  /** Dry air to a cubic metre. */
  densityKgM3: number;
}

export interface SensibleHeatInputs extends AirFlow {
  differenceK: number;
  humidityRatio: number;
}

/** Heat in W that air brings or takes by its temperature. */
export function sensibleHeat(inputs: SensibleHeatInputs): Outcome {
  const reason = findOutOfRange(sensibleHeatRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: inputs.airflowM3s * airHeat(inputs) * inputs.differenceK };
}

/** Heat in J that warms one cubic metre of moist air by one kelvin. */
export const airHeat = ({ densityKgM3, humidityRatio }: { densityKgM3: number; humidityRatio: number }): number =>
  densityKgM3 * (DRY_HEAT + VAPOUR_HEAT * humidityRatio);

export interface LatentHeatInputs extends AirFlow {
  ratioDifference: number;
  /** Heat that a kg of vapour brings. */
  vapourJkg: number;
}

/** Heat in W that air brings or takes by its vapour. */
export function latentHeat(inputs: LatentHeatInputs): Outcome {
  const reason = findOutOfRange(latentHeatRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  const { airflowM3s, densityKgM3, ratioDifference, vapourJkg } = inputs;
  return { ok: true, value: airflowM3s * densityKgM3 * ratioDifference * vapourJkg };
}

export interface TotalHeatInputs extends AirFlow {
  enthalpyDifferenceJkg: number;
}

/** Heat in W that air brings or takes in all. */
export function totalHeat(inputs: TotalHeatInputs): Outcome {
  const reason = findOutOfRange(totalHeatRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: inputs.airflowM3s * inputs.densityKgM3 * inputs.enthalpyDifferenceJkg };
}

const constants = 'Standard-air constants 1.08, 4840 and 4.5 (A-T1)';
const example = 'Latent heat of 10,000 m³/h from W 0.0037 to 0.0057: 16.5 kW (A-T2)';
const standard = { airflowM3s: toSI(1, 'cfm'), densityKgM3: STANDARD_DENSITY };
const flow = {
  airflowM3s: { text: 'Airflow', unit: 'm3/s', min: 0, max: 100 },
  densityKgM3: { text: 'Dry air to a cubic metre', unit: 'kg/m3', min: 0.3, max: 2 },
} as const;
export const vapourHeat = { text: 'Heat that a kg of vapour brings', unit: 'J/kg', min: 2.2e6, max: 2.8e6 } as const;

export const sensibleHeatRecord: FormulaRecord<SensibleHeatInputs> = {
  id: 'air-sensible-heat',
  title: 'Sensible heat of air',
  formula: 'q_s = Q ρ (1006 + 1860 W) Δt',
  inputs: {
    ...flow,
    differenceK: { text: 'Difference of temperature', unit: 'K', min: -100, max: 100 },
    humidityRatio: { text: 'Vapour to dry air', unit: 'kg/kg', min: 0, max: 1 },
  },
  result: { text: 'Sensible heat', unit: 'W', min: -6e7, max: 6e7 },
  source: [{ text: constants, confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: `${constants}: 1.08 Btu/h a cfm and °F`,
      inputs: { ...standard, differenceK: toSI(1, 'deltaF'), humidityRatio: 0 },
      result: toSI(1.08, 'Btu/h'),
      tolerance: 0.005 * toSI(1.08, 'Btu/h'),
    },
  ],
};

export const latentHeatRecord: FormulaRecord<LatentHeatInputs> = {
  id: 'air-latent-heat',
  title: 'Latent heat of air',
  formula: 'q_l = Q ρ ΔW h_v',
  inputs: { ...flow, ratioDifference: { text: 'Difference of vapour to dry air', unit: 'kg/kg', min: -1, max: 1 }, vapourJkg: vapourHeat },
  result: { text: 'Latent heat', unit: 'W', min: -6e8, max: 6e8 },
  source: [{ text: `${constants}; ${example}`, confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: example,
      inputs: { airflowM3s: toSI(10_000, 'm3/h'), densityKgM3: 1.202, ratioDifference: 0.002, vapourJkg: 2_465_560 },
      result: 16_500,
      tolerance: 50,
    },
    {
      kind: 'source',
      from: `${constants}: 4840 Btu/h a cfm, with 1076 Btu/lb`,
      inputs: { ...standard, ratioDifference: 1, vapourJkg: toSI(1076, 'Btu/lb') },
      result: toSI(4840, 'Btu/h'),
      tolerance: 0.005 * toSI(4840, 'Btu/h'),
    },
  ],
};

export const totalHeatRecord: FormulaRecord<TotalHeatInputs> = {
  id: 'air-total-heat',
  title: 'Total heat of air',
  formula: 'q_t = Q ρ Δh',
  inputs: { ...flow, enthalpyDifferenceJkg: { text: 'Difference of enthalpy', unit: 'J/kg', min: -3e6, max: 3e6 } },
  result: { text: 'Total heat', unit: 'W', min: -6e8, max: 6e8 },
  source: [{ text: constants, confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: `${constants}: 4.5 Btu/h a cfm and Btu/lb`,
      inputs: { ...standard, enthalpyDifferenceJkg: toSI(1, 'Btu/lb') },
      result: toSI(4.5, 'Btu/h'),
      tolerance: 0.001 * toSI(4.5, 'Btu/h'),
    },
  ],
};
