import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { heatUpTime } from './heatUpTime';

/** Whether tank and booster heat at once or one after the other, where the supply cannot carry both. */
export const HEATING_ORDERS = ['together', 'in-turn'] as const;
export type HeatingOrder = (typeof HEATING_ORDERS)[number];

export interface FirstHeatUpInputs {
  supplyC: number;
  tankM3: number;
  tankC: number;
  tankW: number;
  boosterM3: number;
  boosterC: number;
  boosterW: number;
  efficiency: number;
  order: HeatingOrder;
}

/** Time in seconds from a cold filling to the first rack: wash tank and booster, each with its own heater. */
export function firstHeatUp(inputs: FirstHeatUpInputs): FormulaResult {
  const refusal = findOutOfRange(firstHeatUpRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { supplyC: fromC, efficiency, order } = inputs;
  const tank = heatUpTime({ waterM3: inputs.tankM3, fromC, toC: inputs.tankC, powerW: inputs.tankW, efficiency });
  const booster = heatUpTime({ waterM3: inputs.boosterM3, fromC, toC: inputs.boosterC, powerW: inputs.boosterW, efficiency });
  if (!tank.ok) return tank;
  if (!booster.ok) return booster;
  return { ok: true, value: order === 'in-turn' ? tank.value + booster.value : Math.max(tank.value, booster.value) };
}

const cold = { supplyC: 10, tankM3: 0.05, tankC: 66, tankW: 5000, boosterM3: 0.015, boosterC: 85, boosterW: 10_000, efficiency: 1 };

export const firstHeatUpRecord: FormulaRecord<FirstHeatUpInputs> = {
  id: 'first-heat-up',
  title: 'First heat-up from cold',
  formula: 't = the longer of tank and booster, or their sum when they heat in turn',
  inputs: {
    supplyC: { text: 'Temperature of the supply', unit: 'C', min: 0, max: 95 },
    tankM3: { text: 'Water of the wash tank', unit: 'm3', min: 0, max: 1 },
    tankC: { text: 'Temperature of the wash', unit: 'C', min: 20, max: 95 },
    tankW: { text: 'Heater of the wash tank', unit: 'W', min: 200, max: 100_000 },
    boosterM3: { text: 'Water in the booster', unit: 'm3', min: 0, max: 0.5 },
    boosterC: { text: 'Temperature of the rinse', unit: 'C', min: 20, max: 95 },
    boosterW: { text: 'Heater of the booster', unit: 'W', min: 200, max: 200_000 },
    efficiency: { text: 'Part of the power that stays in the water', unit: 'share', min: 0.3, max: 1 },
    order: { text: 'Whether both heat at once', choices: HEATING_ORDERS },
  },
  result: { text: 'Time to the first rack', unit: 's', min: 0, max: 1.1e7 },
  source: [{ text: 'Balance of energy in each tank, as in the time to heat a tank', documents: ['arithmetic'], confidence: 'geometry' }],
  unprinted: 'No document at hand works out a machine of this kind.',
  examples: [
    {
      kind: 'regression',
      from: 'tank 50 L by 56 K with 5 kW, booster 15 L by 75 K with 10 kW',
      inputs: { ...cold, order: 'together' },
      result: 2340.2,
      tolerance: 0.5,
    },
    { kind: 'regression', from: 'the same in turn', inputs: { ...cold, order: 'in-turn' }, result: 2810.4, tolerance: 0.5 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 980, formulas: [formula(firstHeatUpRecord, firstHeatUp)] }];
