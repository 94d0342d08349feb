import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface PracticalRateInputs {
  racksPerH: number;
  practicalShare: number;
}

/** Racks an hour that a crew keeps up, of those that the machine is rated for. */
export function practicalRate(inputs: PracticalRateInputs): FormulaResult {
  const refusal = findOutOfRange(practicalRateRecord, inputs);
  return refusal === null ? { ok: true, value: inputs.racksPerH * inputs.practicalShare } : { ok: false, refusal };
}

/** The lower end of what texts of food-service layout take, so the stricter; from memory. */
export const PRACTICAL_SHARE = 0.7;

export const practicalRateRecord: FormulaRecord<PracticalRateInputs> = {
  id: 'practical-rate',
  title: 'Racks an hour in practice',
  formula: 'RPH · practical share',
  inputs: {
    racksPerH: { text: 'Rated racks an hour', unit: '1/h', min: 0, max: 2000 },
    practicalShare: { text: 'Part of the rated rate kept in practice, 0.70 to 0.80', unit: 'share', min: 0.3, max: 1 },
  },
  result: { text: 'Racks an hour', unit: '1/h', min: 0, max: 2000 },
  source: [{ text: 'Practical share from food-service layout texts', documents: ['food-service-layout'], confidence: 'memory' }],
  unprinted: 'No agency or textbook page with a whole rack load is at hand.',
  examples: [
    {
      kind: 'memory',
      from: '55.3846 racks/h at 0.70: 38.769',
      inputs: { racksPerH: 55.3846, practicalShare: PRACTICAL_SHARE },
      result: 38.769,
      tolerance: 1e-3,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 670, formulas: [formula(practicalRateRecord, practicalRate)] }];
