import { toSI } from '../../../units';
import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';

export interface ShaftPowerInputs {
  airflowM3s: number;
  pressurePa: number;
  efficiency: number;
}

/** Shaft power in W that a fan takes for so much air against so much total pressure. */
export function fanShaftPower(inputs: ShaftPowerInputs): Outcome {
  const reason = findOutOfRange(fanShaftPowerRecord, inputs);
  return reason === null ? { ok: true, value: (inputs.airflowM3s * inputs.pressurePa) / inputs.efficiency } : { ok: false, reason };
}

const homework = 'Course homework 6: 2000 cfm at 3.00 in. wg take 1.0 kW, an efficiency of 0.70 (A-N3)';

export const fanShaftPowerRecord: FormulaRecord<ShaftPowerInputs> = {
  id: 'fan-shaft-power',
  title: 'Fan power',
  formula: 'P = Q p / η',
  inputs: {
    airflowM3s: { text: 'Airflow', unit: 'm3/s', min: 0, max: 100 },
    pressurePa: { text: 'Total pressure', unit: 'Pa', min: 0, max: 10_000 },
    efficiency: { text: 'Efficiency', unit: 'ratio', min: 0.05, max: 1 },
  },
  result: { text: 'Shaft power', unit: 'W', min: 0, max: 2e7 },
  source: [{ text: 'Work done on the air in a second over the efficiency (A-N6)', confidence: 'memory' }],
  examples: [
    {
      kind: 'source',
      from: homework,
      inputs: { airflowM3s: toSI(2000, 'cfm'), pressurePa: toSI(3, 'inH2O'), efficiency: 0.705 },
      result: 1000,
      tolerance: 2,
    },
  ],
};
