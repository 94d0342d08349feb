import {
  type Entries,
  type FormulaRecord,
  type FormulaResult,
  feet,
  findOutOfRange,
  formula,
  inches,
  type Limit,
  limit,
} from '../../../rules';
import { toSI } from '../../../units';
import { HEATER_RULES, type HeaterRule, heaterInput } from '../../water';

export interface BoosterInputs {
  rinseM3S: number;
  supplyC: number;
  rinseC: number;
  rule: HeaterRule;
}

/** Power in watts of a booster that keeps up with the rinse, from the supply's temperature to the rinse's; 0 when the supply is hot enough. */
export function boosterPower(inputs: BoosterInputs): FormulaResult {
  const refusal = findOutOfRange(boosterPowerRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { rinseM3S, supplyC, rinseC, rule } = inputs;
  return heaterInput({ demandM3S: rinseM3S, riseK: Math.max(0, rinseC - supplyC), rule });
}

/** How near a booster usually stands to its machine: what lies in the pipe cools. */
export const BOOSTER_DISTANCE: Limit = limit(
  'booster-distance',
  'Way from the booster to the machine',
  'm',
  { max: feet(5) },
  {
    text: 'Gas Technology Institute: as near as possible, usually within 5 ft',
    documents: ['gti-booster'],
    confidence: 'read',
  },
);
export const BOOSTER_CLEAR: Limit = limit(
  'booster-clear',
  'Free height under a booster that stands apart',
  'm',
  { min: inches(6) },
  {
    text: 'Restated without its origin: below a drainboard, at least 6 in above the floor and off the wall',
    documents: ['unnamed-plan-review-guide'],
    confidence: 'secondary',
  },
);

const guide = 'Restated line of a plan-review guide: 64 gph, 40 °F rise, 64 × 40 × 8.33 / .70';
const at = (gph: number, supplyF: number, rule: HeaterRule): BoosterInputs => ({
  rinseM3S: toSI(gph, 'gph'),
  supplyC: toSI(supplyF, 'F'),
  rinseC: toSI(180, 'F'),
  rule,
});

export const boosterPowerRecord: FormulaRecord<BoosterInputs> = {
  id: 'booster-power',
  title: 'Size of the booster',
  formula: 'P = V̇ · (rinse − supply) · k, as for any heater',
  inputs: {
    rinseM3S: { text: 'Rinse water at the real rack rate, as a steady flow', unit: 'm3/s', min: 0, max: 0.001 },
    supplyC: { text: 'Temperature of the supply', unit: 'C', min: 0, max: 95 },
    rinseC: { text: 'Temperature of the final rinse', unit: 'C', min: 40, max: 95 },
    rule: { text: 'Kind of heater and its efficiency', choices: HEATER_RULES },
  },
  result: { text: 'Power of the booster', unit: 'W', min: 0, max: 6e5 },
  source: [
    {
      text: 'San Joaquin County CA, form EHD 16-01, rev. 7/5/17: electric 8.33 / (0.98 · 3412)',
      documents: ['san-joaquin-ehd-16-01'],
      confidence: 'read',
    },
    { text: 'Gas Technology Institute: from 140 °F to 180 °F, within 5 ft of the machine', documents: ['gti-booster'], confidence: 'read' },
  ],
  unprinted: 'The guide prints the expression; its product is worked out here.',
  examples: [
    { kind: 'regression', from: `${guide}: 30,464 Btu/h`, inputs: at(64, 140, 'gas-70'), result: toSI(30_464, 'Btu/h'), tolerance: 1e-6 },
    { kind: 'regression', from: '64 gph, 40 °F: 6.25 kW', inputs: at(64, 140, 'electric'), result: 6250, tolerance: 5 },
    { kind: 'regression', from: '64 gph, 70 °F: 10.94 kW', inputs: at(64, 110, 'electric'), result: 10_940, tolerance: 5 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 930, formulas: [formula(boosterPowerRecord, boosterPower)] },
  { order: 450, limits: [BOOSTER_DISTANCE, BOOSTER_CLEAR] },
];
