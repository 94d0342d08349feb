import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';
import { HEAT_J_PER_M3_K } from '../waterHeat';

export interface RecoveryInputs {
  waterM3: number;
  coldC: number;
  vapourC: number;
  effectiveness: number;
  vapourJ: number;
}

/**
 * Heat in joules that the cold water of a cycle takes from the vapour: what the exchanger can pass, and no more
 * than the vapour holds. 0 when the water is no colder than the vapour.
 */
export function recoveredHeat(inputs: RecoveryInputs): Outcome {
  const reason = findOutOfRange(recoveredHeatRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  const { waterM3, coldC, vapourC, effectiveness, vapourJ } = inputs;
  const passed = waterM3 * HEAT_J_PER_M3_K * effectiveness * Math.max(0, vapourC - coldC);
  return { ok: true, value: Math.min(passed, vapourJ) };
}

/** Temperature in °C with which that water comes to the booster. */
export function preheatedTemperature(inputs: RecoveryInputs): Outcome {
  const reason = findOutOfRange(preheatedTemperatureRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  const heat = recoveredHeat(inputs);
  return heat.ok ? { ok: true, value: inputs.coldC + heat.value / (inputs.waterM3 * HEAT_J_PER_M3_K) } : heat;
}

const inputs: FormulaRecord<RecoveryInputs>['inputs'] = {
  waterM3: { text: 'Cold water of one cycle', unit: 'm3', min: 0.0005, max: 0.05 },
  coldC: { text: 'Temperature of the cold supply', unit: 'C', min: 0, max: 60 },
  vapourC: { text: 'Temperature of the vapour at the exchanger', unit: 'C', min: 0, max: 100 },
  effectiveness: { text: 'Effectiveness of the exchanger, from the data sheet', unit: 'ratio', min: 0, max: 1 },
  vapourJ: { text: 'Heat that the vapour of one cycle can give', unit: 'J', min: 0, max: 1e7 },
};
const source = [
  {
    text: 'Balance of energy; effectiveness is the share of the greatest possible transfer, from the definition in heat-transfer texts',
    confidence: 'memory',
  },
] as const;
const unprinted = 'No public document at hand works out a machine of this kind.';
const cycle: RecoveryInputs = { waterM3: 0.003, coldC: 12, vapourC: 60, effectiveness: 0.5, vapourJ: 400_000 };

export const recoveredHeatRecord: FormulaRecord<RecoveryInputs> = {
  id: 'recovered-heat',
  title: 'Recovered heat',
  formula: 'Q = V · ρ c · ε · (vapour − cold), at least 0, at most what the vapour holds',
  inputs,
  result: { text: 'Heat recovered in a cycle', unit: 'J', min: 0, max: 1e7 },
  source: [...source],
  unprinted,
  examples: [
    { kind: 'regression', from: '3 L by 24 K', inputs: cycle, result: 300_887, tolerance: 50 },
    { kind: 'regression', from: 'the vapour holds less', inputs: { ...cycle, vapourJ: 200_000 }, result: 200_000, tolerance: 0 },
  ],
};

export const preheatedTemperatureRecord: FormulaRecord<RecoveryInputs> = {
  id: 'preheated-temperature',
  title: 'Temperature after heat recovery',
  formula: 'T = cold + Q / (V · ρ c)',
  inputs,
  result: { text: 'Temperature of the water to the booster', unit: 'C', min: 0, max: 100 },
  source: [...source],
  unprinted,
  examples: [{ kind: 'regression', from: 'half the way from 12 °C to 60 °C', inputs: cycle, result: 36, tolerance: 1e-9 }],
};
