import { toSI } from '../../units';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../record';

export interface RunningCostInputs {
  waterM3: number;
  moneyPerM3: number;
  energyJ: number;
  moneyPerKwh: number;
}

/** Cost of water and energy at a tariff, in the tariff's money: of a rack, a day or a year, as the two amounts are. */
export function runningCost(inputs: RunningCostInputs): Outcome {
  const reason = findOutOfRange(runningCostRecord, inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: inputs.waterM3 * inputs.moneyPerM3 + (inputs.energyJ / toSI(1, 'kWh')) * inputs.moneyPerKwh };
}

export const runningCostRecord: FormulaRecord<RunningCostInputs> = {
  id: 'running-cost',
  title: 'Cost of water and energy',
  formula: 'C = water · price + energy · price',
  inputs: {
    waterM3: { text: 'Water', unit: 'm3', min: 0, max: 1e6 },
    moneyPerM3: { text: 'Price of a cubic metre of water with its sewer charge', unit: 'money', min: 0, max: 1000 },
    energyJ: { text: 'Energy', unit: 'J', min: 0, max: 1e14 },
    moneyPerKwh: { text: 'Price of a kWh', unit: 'money', min: 0, max: 100 },
  },
  result: { text: 'Cost', unit: 'money', min: 0, max: 4e9 },
  source: [{ text: 'A tariff is what the user pays: amount times price', confidence: 'geometry' }],
  unprinted: 'A sum of two products.',
  examples: [
    {
      kind: 'regression',
      from: '100 m³ at 3.00 and 7000 kWh at 0.15',
      inputs: { waterM3: 100, moneyPerM3: 3, energyJ: toSI(7000, 'kWh'), moneyPerKwh: 0.15 },
      result: 1350,
      tolerance: 1e-9,
    },
  ],
};
