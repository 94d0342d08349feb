import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { fromSI, toSI } from '../../../units';
import { BTU_PER_KWH, POUNDS_PER_GALLON } from './support/waterHeat';

/** Constants of water, 1.6 % apart: 8.33 lb a gallon and 3412 Btu a kWh of the sizing forms (the higher), 8.2 and 3413 that the energy figures follow. */
export const WATER_CONSTANTS = ['sizing', 'energy-data'] as const;
export type WaterConstants = (typeof WATER_CONSTANTS)[number];

export interface WaterHeatingInputs {
  waterM3: number;
  riseK: number;
  efficiency: number;
  constants: WaterConstants;
}

/** Energy in joules that heats so much water by so much. */
export function waterHeating(inputs: WaterHeatingInputs): FormulaResult {
  const refusal = findOutOfRange(waterHeatingRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { waterM3, riseK, efficiency, constants } = inputs;
  const kWh = (fromSI(waterM3, 'gal') * fromSI(riseK, 'deltaF') * KWH[constants]) / efficiency;
  return { ok: true, value: toSI(kWh, 'kWh') };
}

/** kWh for one gallon and one °F. */
const KWH: Readonly<Record<WaterConstants, number>> = { sizing: POUNDS_PER_GALLON / BTU_PER_KWH, 'energy-data': 8.2 / 3413 };

const data = 'Yearly figures of a door machine, all-electric, in a public file; 8.2 and 3413 are fitted to them';
const year = (gal: number, rise: number, constants: WaterConstants): WaterHeatingInputs => ({
  waterM3: toSI(gal, 'gal'),
  riseK: toSI(rise, 'deltaF'),
  efficiency: 0.98,
  constants,
});

export const waterHeatingRecord: FormulaRecord<WaterHeatingInputs> = {
  id: 'water-heating',
  title: 'Energy of heating water',
  formula: 'E = V · ΔT · k / η; k is 8.33 / 3412 or 8.2 / 3413 kWh for a gallon and a °F',
  inputs: {
    waterM3: { text: 'Water', unit: 'm3', min: 0, max: 10_000 },
    riseK: { text: 'Rise of temperature, from the cold supply to the rinse', unit: 'K', min: 0, max: 100 },
    efficiency: { text: 'Efficiency of heating', unit: 'share', min: 0.3, max: 1 },
    constants: { text: 'Weight of water and Btu of a kWh', choices: WATER_CONSTANTS },
  },
  result: { text: 'Energy', unit: 'J', min: 0, max: 1.4e13 },
  source: [
    { text: `${data}`, documents: ['year-of-a-machine'], confidence: 'read' },
    { text: 'San Joaquin County CA, form EHD 16-01: 8.33 / (0.98 · 3412)', documents: ['san-joaquin-ehd-16-01'], confidence: 'read' },
  ],
  examples: [
    {
      kind: 'source',
      from: `${data}: 37,565 gal, 110 °F`,
      inputs: year(37_565, 110, 'energy-data'),
      result: toSI(10_130, 'kWh'),
      tolerance: toSI(1, 'kWh'),
    },
    {
      kind: 'source',
      from: `${data}: 25,917 gal, 110 °F`,
      inputs: year(25_917, 110, 'energy-data'),
      result: toSI(6989, 'kWh'),
      tolerance: toSI(1, 'kWh'),
    },
    {
      kind: 'regression',
      from: 'the first with 8.33 and 3412',
      inputs: year(37_565, 110, 'sizing'),
      result: toSI(10_294, 'kWh'),
      tolerance: toSI(1, 'kWh'),
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 900, formulas: [formula(waterHeatingRecord, waterHeating)] }];
