import {
  createRefusal,
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  type FormulaSource,
  findOutOfRange,
  formula,
} from '../../../rules';
import { toSI } from '../../../units';
import { airHeat } from './support/airHeat';
import { STANDARD_DENSITY } from './support/standardAir';

interface Supply {
  airflowM3s: number;
  /** Dry air to a cubic metre of it. */
  densityKgM3: number;
  supplyRatio: number;
}

export interface SteadyHumidityInputs extends Supply {
  vapourKgS: number;
}

/** Humidity ratio of a well-mixed room after a long while: that of its supply air and what the vapour adds. */
export function steadyHumidity(inputs: SteadyHumidityInputs): FormulaResult {
  const refusal = findOutOfRange(steadyHumidityRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.supplyRatio + inputs.vapourKgS / (inputs.densityKgM3 * inputs.airflowM3s) };
}

export interface SteadyTemperatureInputs extends Supply {
  supplyC: number;
  sensibleW: number;
}

/** Temperature in °C of a well-mixed room after a long while, with no other gain and no cooling. */
export function steadyTemperature(inputs: SteadyTemperatureInputs): FormulaResult {
  const refusal = findOutOfRange(steadyTemperatureRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { supplyC, sensibleW, airflowM3s, densityKgM3, supplyRatio } = inputs;
  return { ok: true, value: supplyC + sensibleW / (airflowM3s * airHeat({ densityKgM3, humidityRatio: supplyRatio })) };
}

export interface HumidityAirflowInputs {
  vapourKgS: number;
  densityKgM3: number;
  supplyRatio: number;
  /** The ratio that the room may reach. */
  highestRatio: number;
}

/** Airflow in m³/s that keeps a room's humidity ratio at most at a value. */
export function humidityAirflow(inputs: HumidityAirflowInputs): FormulaResult {
  const refusal = findOutOfRange(humidityAirflowRecord, inputs) ?? findMoistSupply(inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.vapourKgS / (inputs.densityKgM3 * (inputs.highestRatio - inputs.supplyRatio)) };
}

const also = 'the supply air is drier than the room may be';

const findMoistSupply = ({ supplyRatio, highestRatio }: HumidityAirflowInputs) =>
  supplyRatio < highestRatio ? null : createRefusal(humidityAirflowRecord, 'supply-not-drier', { supplyRatio, highestRatio });

const balance: FormulaSource[] = [
  { text: 'Balance of a ventilated room, steady C = G/Q', documents: ['room-concentration'], confidence: 'read' },
];
const constants = 'Standard-air constant 1.08 Btu/h a cfm and °F';
const supply: Supply = { airflowM3s: toSI(400, 'cfm'), densityKgM3: STANDARD_DENSITY, supplyRatio: 0.0092357 };
const vapourKgS = toSI(2.6296, 'lb') / 3600;

const notes = {
  airflowM3s: { text: 'Airflow through the room', unit: 'm3/s', min: 0.005, max: 100 },
  densityKgM3: { text: 'Dry air to a cubic metre', unit: 'kg/m3', min: 0.3, max: 2 },
  supplyRatio: { text: 'Vapour to dry air of the supply', unit: 'kg/kg', min: 0, max: 0.2 },
} as const;
const vapour = { text: 'Vapour into the room', unit: 'kg/s', min: 0, max: 0.1 } as const;

export const steadyHumidityRecord: FormulaRecord<SteadyHumidityInputs> = {
  id: 'steady-humidity',
  title: 'Steady humidity of a room',
  formula: 'W = W_s + m / (ρ Q)',
  inputs: { ...notes, vapourKgS: vapour },
  result: { text: 'Vapour to dry air of the room', unit: 'kg/kg', min: 0, max: Number.POSITIVE_INFINITY },
  source: balance,
  examples: [
    {
      kind: 'regression',
      from: 'door machine, 2.6296 lb/h into 400 cfm of 75 °F and 50 %: 0.0106966',
      inputs: { ...supply, vapourKgS },
      result: 0.0106966,
      tolerance: 1e-7,
    },
  ],
  unprinted: 'The balance is published without a case for moisture; its general form is tested against a published table.',
};

export const steadyTemperatureRecord: FormulaRecord<SteadyTemperatureInputs> = {
  id: 'steady-temperature',
  title: 'Steady temperature of a room',
  formula: 't = t_s + q_s / [ ρ Q (1006 + 1860 W) ]',
  inputs: {
    ...notes,
    supplyC: { text: 'Supply air', unit: 'C', min: -40, max: 60 },
    sensibleW: { text: 'Sensible heat into the room', unit: 'W', min: 0, max: 1e6 },
  },
  result: { text: 'Temperature of the room', unit: 'C', min: -40, max: 1e6 },
  source: [{ text: constants, documents: ['ashrae-fundamentals-2021'], confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: `${constants}: 1080 Btu/h warm 100 cfm of dry air by 10 °F`,
      inputs: {
        airflowM3s: toSI(100, 'cfm'),
        densityKgM3: STANDARD_DENSITY,
        supplyRatio: 0,
        supplyC: 20,
        sensibleW: toSI(1080, 'Btu/h'),
      },
      result: 20 + toSI(10, 'deltaF'),
      tolerance: 0.05,
    },
    {
      kind: 'regression',
      from: 'door machine, 1980 Btu/h into 400 cfm of 75 °F: 79.58 °F by the constant 1.08, 0.1 °F less with the vapour',
      inputs: { ...supply, supplyC: toSI(75, 'F'), sensibleW: toSI(1980, 'Btu/h') },
      result: toSI(79.58, 'F'),
      tolerance: toSI(0.12, 'deltaF'),
    },
  ],
};

export const humidityAirflowRecord: FormulaRecord<HumidityAirflowInputs> = {
  id: 'humidity-airflow',
  title: 'Airflow against humidity',
  formula: 'Q = m / [ ρ (W_max − W_s) ]',
  inputs: {
    vapourKgS: vapour,
    densityKgM3: notes.densityKgM3,
    supplyRatio: notes.supplyRatio,
    highestRatio: { text: 'Vapour to dry air that the room may reach', unit: 'kg/kg', min: 0.0001, max: 0.3 },
  },
  result: { text: 'Airflow', unit: 'm3/s', min: 0, max: Number.POSITIVE_INFINITY },
  source: balance,
  examples: [
    {
      kind: 'regression',
      from: '400 cfm',
      inputs: { vapourKgS, densityKgM3: STANDARD_DENSITY, supplyRatio: 0.0092357, highestRatio: 0.0106966 },
      result: toSI(400, 'cfm'),
      tolerance: 1e-4,
    },
  ],
  unprinted: 'The balance is published without a case for moisture.',
  also,
};

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 600,
    formulas: [
      formula(steadyHumidityRecord, steadyHumidity),
      formula(steadyTemperatureRecord, steadyTemperature),
      formula(humidityAirflowRecord, humidityAirflow),
    ],
  },
];
