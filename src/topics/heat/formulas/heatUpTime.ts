import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { toSI } from '../../../units';
import { HEAT_J_PER_M3_K } from '../../water';

export interface HeatUpInputs {
  waterM3: number;
  fromC: number;
  toC: number;
  powerW: number;
  efficiency: number;
}

/** Time in seconds in which a heater brings a tank to temperature; 0 when it is there. What escapes meanwhile counts in the efficiency. */
export function heatUpTime(inputs: HeatUpInputs): FormulaResult {
  const refusal = findOutOfRange(heatUpTimeRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { waterM3, fromC, toC, powerW, efficiency } = inputs;
  return { ok: true, value: (waterM3 * Math.max(0, toC - fromC) * HEAT_J_PER_M3_K) / (powerW * efficiency) };
}

const form = 'San Joaquin County CA, form EHD 16-01, a filing: 93 gph by 60 °F take 13.9 kW, so 93 gal take an hour';

export const heatUpTimeRecord: FormulaRecord<HeatUpInputs> = {
  id: 'heat-up-time',
  title: 'Time to heat a tank',
  formula: 't = V · ρ c · (to − from) / (P · η), ρ c = 4.179 MJ/(m³·K)',
  inputs: {
    waterM3: { text: 'Water in the tank', unit: 'm3', min: 0, max: 1 },
    fromC: { text: 'Temperature at the start', unit: 'C', min: 0, max: 100 },
    toC: { text: 'Temperature at the end', unit: 'C', min: 0, max: 100 },
    powerW: { text: 'Power of the heater', unit: 'W', min: 200, max: 200_000 },
    efficiency: { text: 'Part of it that stays in the water', unit: 'share', min: 0.3, max: 1 },
  },
  result: { text: 'Time', unit: 's', min: 0, max: 7e6 },
  source: [
    {
      text: 'Balance of energy; weight and heat of water as in form EHD 16-01',
      documents: ['san-joaquin-ehd-16-01', 'arithmetic'],
      confidence: 'read',
    },
  ],
  examples: [
    {
      kind: 'source',
      from: form,
      inputs: { waterM3: toSI(93, 'gal'), fromC: toSI(60, 'F'), toC: toSI(120, 'F'), powerW: 13_900, efficiency: 0.98 },
      result: 3600,
      tolerance: 13,
    },
    {
      kind: 'regression',
      from: '50 L from 15 °C to 66 °C by 5 kW',
      inputs: { waterM3: 0.05, fromC: 15, toC: 66, powerW: 5000, efficiency: 1 },
      result: 2131.3,
      tolerance: 0.5,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 970, formulas: [formula(heatUpTimeRecord, heatUpTime)] }];
