import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, type Limit, limit } from '../../../rules';
import { toSI } from '../../../units';

/** Hardness of the supply: above, a softener; below, some equipment suffers. A machine's own sheet may be stricter. */
export const SUPPLY_HARDNESS: Limit = limit(
  'supply-hardness',
  'Hardness of the supply',
  'kg/m3',
  { min: toSI(2, 'gpg'), max: toSI(6, 'gpg') },
  {
    text: 'UFC 4-750-01NF (16 Apr 2004), 6-2.3.2: softener above 6 gpg; below 2 gpg can hurt some equipment',
    documents: ['ufc-4-750-01nf'],
    confidence: 'read',
  },
);

export interface HardnessInputs {
  hardnessKgM3: number;
  waterM3: number;
}

/** Mass in kg, as calcium carbonate, that so much water carries into the machine. What part of it settles as scale is not known. */
export function hardnessMass(inputs: HardnessInputs): FormulaResult {
  const refusal = findOutOfRange(hardnessMassRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.hardnessKgM3 * inputs.waterM3 } : { ok: false, refusal };
}

const grain = 'NIST SP 811 B.9 and Handbook 44 App. C: 1 grain a US gallon is 17.118061 mg/L';

export const hardnessMassRecord: FormulaRecord<HardnessInputs> = {
  id: 'hardness-mass',
  title: 'Hardness carried in',
  formula: 'm = hardness · V',
  inputs: {
    hardnessKgM3: { text: 'Hardness as calcium carbonate', unit: 'kg/m3', min: 0, max: 2 },
    waterM3: { text: 'Water, say between two delimings', unit: 'm3', min: 0, max: 10_000 },
  },
  result: { text: 'Mass as calcium carbonate', unit: 'kg', min: 0, max: 20_000 },
  source: [{ text: grain, documents: ['nist-sp-811'], confidence: 'secondary' }],
  examples: [
    { kind: 'source', from: grain, inputs: { hardnessKgM3: toSI(1, 'gpg'), waterM3: 1 }, result: 0.017118061, tolerance: 5e-10 },
    {
      kind: 'regression',
      from: '6 gpg in 10 m³',
      inputs: { hardnessKgM3: toSI(6, 'gpg'), waterM3: 10 },
      result: 1.0270837,
      tolerance: 1e-6,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 890, formulas: [formula(hardnessMassRecord, hardnessMass)] },
  { order: 290, limits: [SUPPLY_HARDNESS] },
];
