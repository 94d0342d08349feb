import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';

export interface NominalSizeInputs {
  boreM: number;
}

/**
 * Nominal size in metres of a drain, by which codes count, from its inside diameter. A bore between two sizes counts as the
 * smaller, which carries less and falls more.
 */
export function nominalSize(inputs: NominalSizeInputs): FormulaResult {
  const refusal = findOutOfRange(nominalSizeRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const size = SIZES.findLast((one) => inches(one) <= inputs.boreM * (1 + WALL)) ?? SIZES[0];
  return { ok: true, value: inches(size) };
}

/** Sizes of drain pipe, inches. */
const SIZES = [1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12] as const;
/** By so much of itself a bore may stay under its name. */
const WALL = 0.05;

const at = (bore: number): NominalSizeInputs => ({ boreM: inches(bore) });

export const nominalSizeRecord: FormulaRecord<NominalSizeInputs> = {
  id: 'nominal-size',
  title: 'Nominal size of a drain',
  formula: 'the largest of 1¼, 1½, 2, 2½, 3, 4, 5, 6, 8, 10, 12 in that is at most 1.05 d',
  inputs: { boreM: { text: 'Inside diameter', unit: 'm', min: inches(1.2), max: inches(12.6) } },
  result: { text: 'Nominal size', unit: 'm', min: inches(1.25), max: inches(12) },
  source: [
    {
      text: 'Drain pipe is named by about its inside diameter, a few hundredths more or less',
      documents: ['common-practice'],
      confidence: 'practice',
    },
  ],
  unprinted: 'A habit of the trade, in no table at hand.',
  examples: [
    { kind: 'regression', from: 'cast iron, 2.96 in: 3 in', inputs: at(2.96), result: inches(3), tolerance: 0 },
    { kind: 'regression', from: 'plastic, 2.067 in: 2 in', inputs: at(2.067), result: inches(2), tolerance: 0 },
    { kind: 'regression', from: 'between two sizes, 3.5 in: 3 in', inputs: at(3.5), result: inches(3), tolerance: 0 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1050, formulas: [formula(nominalSizeRecord, nominalSize)] }];
