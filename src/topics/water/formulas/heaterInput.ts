import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { fromSI, toSI } from '../../../units';
import { BTU_PER_KWH, POUNDS_PER_GALLON } from './support/waterHeat';

/**
 * Kind of heater and how its efficiency is taken. Forms disagree: 8.33 / 0.75 is 11.107, the form of one county
 * rounds it to 11 and another takes 0.70. `gas-70` is the strictest for gas, `electric-98` for electricity.
 */
export const HEATER_RULES = ['gas-eleven', 'gas-75', 'gas-70', 'electric-98', 'electric'] as const;
export type HeaterRule = (typeof HEATER_RULES)[number];

export interface HeaterInputs {
  demandM3S: number;
  riseK: number;
  rule: HeaterRule;
}

/** Input of a water heater in watts, for a steady demand and a rise of temperature. */
export function heaterInput(inputs: HeaterInputs): FormulaResult {
  const refusal = findOutOfRange(heaterInputRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { demandM3S, riseK, rule } = inputs;
  return { ok: true, value: fromSI(demandM3S, 'gph') * fromSI(riseK, 'deltaF') * WATTS[rule] };
}

/** Watts for one gallon an hour and one °F. */
const WATTS: Readonly<Record<HeaterRule, number>> = {
  'gas-eleven': toSI(11, 'Btu/h'),
  'gas-75': toSI(POUNDS_PER_GALLON / 0.75, 'Btu/h'),
  'gas-70': toSI(POUNDS_PER_GALLON / 0.7, 'Btu/h'),
  'electric-98': toSI(POUNDS_PER_GALLON / (0.98 * BTU_PER_KWH), 'kW'),
  electric: toSI(POUNDS_PER_GALLON / BTU_PER_KWH, 'kW'),
};

const form = 'San Joaquin County CA, Plan Check Guide Appendix E, form EHD 16-01, rev. 7/5/17';
const at = (gph: number, rule: HeaterRule): HeaterInputs => ({ demandM3S: toSI(gph, 'gph'), riseK: toSI(60, 'deltaF'), rule });

export const heaterInputRecord: FormulaRecord<HeaterInputs> = {
  id: 'heater-input',
  title: 'Heater input',
  formula:
    'P = V̇ · ΔT · k; k is 11, 8.33 / 0.75 or 8.33 / 0.70 Btu, or 8.33 / (0.98 · 3412) or 8.33 / 3412 kWh, each for a gallon and a °F',
  inputs: {
    demandM3S: {
      text: 'Hot water wanted: in the busiest hour, as a steady flow; without a store, at once',
      unit: 'm3/s',
      min: 0,
      max: 0.01,
    },
    riseK: { text: 'Rise of temperature', unit: 'K', min: 0, max: 100 },
    rule: { text: 'Kind of heater and its efficiency', choices: HEATER_RULES },
  },
  result: { text: 'Heater input', unit: 'W', min: 0, max: 6e6 },
  source: [
    { text: `${form}: gas factor 11, electric 8.33 / (0.98 · 3412)`, documents: ['san-joaquin-ehd-16-01'], confidence: 'read' },
    { text: 'Monterey County CA, form PC-HWH: 8.33 / 0.7', documents: ['monterey-pc-hwh'], confidence: 'read' },
  ],
  examples: [
    {
      kind: 'source',
      from: `${form}, a filing: 265 gph`,
      inputs: at(265, 'gas-eleven'),
      result: toSI(174_900, 'Btu/h'),
      tolerance: 1e-6,
    },
    { kind: 'source', from: `${form}, a filing: 93 gph, 13.9 kW`, inputs: at(93, 'electric-98'), result: 13_900, tolerance: 50 },
    {
      kind: 'regression',
      from: '265 · 60 · 8.33 / 0.75',
      inputs: at(265, 'gas-75'),
      result: toSI(176_596, 'Btu/h'),
      tolerance: 1e-6,
    },
    {
      kind: 'regression',
      from: 'one gallon, 60 °F: 714.0 Btu',
      inputs: at(1, 'gas-70'),
      result: toSI(714, 'Btu/h'),
      tolerance: 1e-6,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 840, formulas: [formula(heaterInputRecord, heaterInput)] }];
