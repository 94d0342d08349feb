import { toSI } from '../../../units';
import { type FormulaRecord, type FormulaSource, findOutOfRange, type Outcome } from '../../record';

interface SpeedRatio {
  /** New speed over the old one. */
  speedRatio: number;
}

interface SpeedAndDensity extends SpeedRatio {
  /** New density over the old one. */
  densityRatio: number;
}

export interface FanAirflowInputs extends SpeedRatio {
  airflowM3s: number;
}

export interface FanPressureInputs extends SpeedAndDensity {
  pressurePa: number;
}

export interface FanPowerInputs extends SpeedAndDensity {
  powerW: number;
}

/** Airflow of the same fan on the same system at another speed; density changes nothing of it. */
export function fanAirflow(inputs: FanAirflowInputs): Outcome {
  const reason = findOutOfRange(fanAirflowRecord, inputs);
  return reason === null ? { ok: true, value: inputs.airflowM3s * inputs.speedRatio } : { ok: false, reason };
}

/** Pressure of the same fan at another speed and density, Pa. */
export function fanPressure(inputs: FanPressureInputs): Outcome {
  const reason = findOutOfRange(fanPressureRecord, inputs);
  return reason === null ? { ok: true, value: inputs.pressurePa * inputs.speedRatio ** 2 * inputs.densityRatio } : { ok: false, reason };
}

/** Shaft power of the same fan at another speed and density, W. It grows with the cube: a motor is soon too small. */
export function fanPowerAtSpeed(inputs: FanPowerInputs): Outcome {
  const reason = findOutOfRange(fanPowerAtSpeedRecord, inputs);
  return reason === null ? { ok: true, value: inputs.powerW * inputs.speedRatio ** 3 * inputs.densityRatio } : { ok: false, reason };
}

const laws: FormulaSource[] = [{ text: 'Fan laws for one fan: Q goes with N, p with N² ρ, P with N³ ρ (A-N1)', confidence: 'read' }];
const homework = 'Course homework 6: 6000 cfm, 4 in. wg, 6 hp at 2000 rpm, now at 1500 rpm (A-N2)';
const slower = { speedRatio: 1500 / 2000 };
const ratio = (text: string) => ({ text, unit: 'ratio', min: 0.2, max: 2 }) as const;
const speed = { speedRatio: ratio('New speed over the old one') };
const density = { densityRatio: ratio('New density over the old one') };

export const fanAirflowRecord: FormulaRecord<FanAirflowInputs> = {
  id: 'fan-law-airflow',
  title: 'Airflow at another speed',
  formula: 'Q₂ = Q₁ N₂/N₁',
  inputs: { airflowM3s: { text: 'Airflow', unit: 'm3/s', min: 0, max: 100 }, ...speed },
  result: { text: 'Airflow at the new speed', unit: 'm3/s', min: 0, max: 200 },
  source: laws,
  examples: [
    {
      kind: 'source',
      from: homework,
      inputs: { airflowM3s: toSI(6000, 'cfm'), ...slower },
      result: toSI(4500, 'cfm'),
      tolerance: 1e-12,
    },
  ],
};

export const fanPressureRecord: FormulaRecord<FanPressureInputs> = {
  id: 'fan-law-pressure',
  title: 'Pressure at another speed',
  formula: 'p₂ = p₁ (N₂/N₁)² ρ₂/ρ₁',
  inputs: { pressurePa: { text: 'Pressure', unit: 'Pa', min: 0, max: 10_000 }, ...speed, ...density },
  result: { text: 'Pressure at the new speed and density', unit: 'Pa', min: 0, max: 80_000 },
  source: laws,
  examples: [
    {
      kind: 'source',
      from: homework,
      inputs: { pressurePa: toSI(4, 'inH2O'), ...slower, densityRatio: 1 },
      result: toSI(2.25, 'inH2O'),
      tolerance: 1e-9,
    },
  ],
};

export const fanPowerAtSpeedRecord: FormulaRecord<FanPowerInputs> = {
  id: 'fan-law-power',
  title: 'Fan power at another speed',
  formula: 'P₂ = P₁ (N₂/N₁)³ ρ₂/ρ₁',
  inputs: { powerW: { text: 'Shaft power', unit: 'W', min: 0, max: 1e5 }, ...speed, ...density },
  result: { text: 'Shaft power at the new speed and density', unit: 'W', min: 0, max: 1.6e6 },
  source: laws,
  examples: [
    {
      kind: 'source',
      from: homework,
      inputs: { powerW: toSI(6, 'hp'), ...slower, densityRatio: 1 },
      result: toSI(2.53, 'hp'),
      tolerance: toSI(0.01, 'hp'),
    },
  ],
};
