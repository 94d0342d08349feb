import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';

export interface RunningCostInputs {
  waterM3: number;
  moneyPerM3: number;
  electricityJ: number;
  moneyPerKwh: number;
  gasJ: number;
  moneyPerGasKwh: number;
}

/** Cost of water and energy at a tariff, in the tariff's money: of a rack, a day or a year, as the two amounts are. */
export function runningCost(inputs: RunningCostInputs): FormulaResult {
  const refusal = findOutOfRange(runningCostRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { waterM3, moneyPerM3, electricityJ, moneyPerKwh, gasJ, moneyPerGasKwh } = inputs;
  return { ok: true, value: waterM3 * moneyPerM3 + (electricityJ * moneyPerKwh + gasJ * moneyPerGasKwh) / toSI(1, 'kWh') };
}

export const runningCostRecord: FormulaRecord<RunningCostInputs> = {
  id: 'running-cost',
  title: 'Cost of water and energy',
  formula: 'C = water · price + electricity · price + gas · price',
  inputs: {
    waterM3: { text: 'Water', unit: 'm3', min: 0, max: 1e6 },
    moneyPerM3: { text: 'Price of a cubic metre of water with its sewer charge', unit: 'money', min: 0, max: 10_000 },
    electricityJ: { text: 'Electricity', unit: 'J', min: 0, max: 1e14 },
    moneyPerKwh: { text: 'Price of a kWh of electricity', unit: 'money', min: 0, max: 1000 },
    gasJ: { text: 'Gas', unit: 'J', min: 0, max: 1e14 },
    moneyPerGasKwh: { text: 'Price of a kWh of gas', unit: 'money', min: 0, max: 1000 },
  },
  result: { text: 'Cost', unit: 'money', min: 0, max: 1e11 },
  source: [{ text: 'A tariff is what the user pays: amount times price', documents: ['arithmetic'], confidence: 'geometry' }],
  unprinted: 'A sum of products.',
  examples: [
    {
      kind: 'regression',
      from: '100 m³ at 3.00, 7000 kWh at 0.15 and 2000 kWh of gas at 0.05',
      inputs: {
        waterM3: 100,
        moneyPerM3: 3,
        electricityJ: toSI(7000, 'kWh'),
        moneyPerKwh: 0.15,
        gasJ: toSI(2000, 'kWh'),
        moneyPerGasKwh: 0.05,
      },
      result: 1450,
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 920, formulas: [formula(runningCostRecord, runningCost)] }];
