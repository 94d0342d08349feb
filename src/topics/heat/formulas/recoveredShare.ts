import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { HEAT_J_PER_M3_K } from '../../water';

export interface RecoveredShareInputs {
  supplyC: number;
  rinseC: number;
  /** Of the heat that the rinse needs, what the machine wins back. */
  share: number;
}

/** Heat in joules that a machine wins back for the rinse of one rack, where its data sheet states the share. */
export function recoveredShare(inputs: RecoveredShareInputs & { waterM3: number }): FormulaResult {
  const refusal = findOutOfRange(recoveredShareRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.share * inputs.waterM3 * HEAT_J_PER_M3_K * Math.max(0, inputs.rinseC - inputs.supplyC) };
}

/** Temperature in °C with which the water then comes to the booster. */
export function warmedSupply(inputs: RecoveredShareInputs): FormulaResult {
  const refusal = findOutOfRange(warmedSupplyRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: inputs.supplyC + inputs.share * Math.max(0, inputs.rinseC - inputs.supplyC) };
}

const inputs: FormulaRecord<RecoveredShareInputs>['inputs'] = {
  supplyC: { text: 'Temperature of the supply', unit: 'C', min: 0, max: 95 },
  rinseC: { text: 'Temperature of the final rinse', unit: 'C', min: 40, max: 95 },
  share: { text: 'Share of the rinse’s heat that is won back, from the data sheet', unit: 'share', min: 0, max: 1 },
};
const source = [
  {
    text: 'Balance of energy: the share of the data sheet, of the heat from the supply to the rinse',
    documents: ['arithmetic'],
    confidence: 'geometry',
  },
] as const;
const unprinted = 'A share of a sum of heat; no document at hand works out a machine of this kind.';

export const recoveredShareRecord: FormulaRecord<RecoveredShareInputs & { waterM3: number }> = {
  id: 'recovered-share',
  title: 'Heat won back',
  formula: 'Q = share · V · ρ c · (rinse − supply), at least 0; ρ c = 4.179 MJ/(m³·K)',
  inputs: { ...inputs, waterM3: { text: 'Rinse water of one rack', unit: 'm3', min: 0, max: 0.1 } },
  result: { text: 'Heat won back for one rack', unit: 'J', min: 0, max: 4e7 },
  source: [...source],
  unprinted,
  examples: [
    {
      kind: 'regression',
      from: 'half of 3 L by 70 K',
      inputs: { waterM3: 0.003, supplyC: 12, rinseC: 82, share: 0.5 },
      result: 438_793,
      tolerance: 100,
    },
  ],
};

export const warmedSupplyRecord: FormulaRecord<RecoveredShareInputs> = {
  id: 'warmed-supply',
  title: 'Supply warmed by what is won back',
  formula: 'T = supply + share · (rinse − supply)',
  inputs,
  result: { text: 'Temperature of the water to the booster', unit: 'C', min: 0, max: 95 },
  source: [...source],
  unprinted,
  examples: [
    {
      kind: 'regression',
      from: 'half the way from 12 °C to 82 °C',
      inputs: { supplyC: 12, rinseC: 82, share: 0.5 },
      result: 47,
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 990, formulas: [formula(recoveredShareRecord, recoveredShare), formula(warmedSupplyRecord, warmedSupply)] },
];
