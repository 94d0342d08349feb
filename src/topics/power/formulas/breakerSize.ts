import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { isAtMost } from '../../../units';

/** Whether the load runs three hours or more. The sources do not settle it for a dish machine; `continuous` is the stricter. */
export const LOAD_KINDS = ['continuous', 'not-continuous'] as const;
export type LoadKind = (typeof LOAD_KINDS)[number];

export interface BreakerInputs {
  currentA: number;
  load: LoadKind;
}

/** Current in amperes that device and conductor must carry: 125 % of a continuous load. */
export const designCurrent = ({ currentA, load }: BreakerInputs): number => currentA * (load === 'continuous' ? 1.25 : 1);

/** Next standard breaker, in amperes. Preliminary: the machine's own plate may ask for another, and a licensed electrician decides. */
export function breakerSize(inputs: BreakerInputs): FormulaResult {
  const refusal = findOutOfRange(breakerSizeRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const needed = designCurrent(inputs);
  const size = STANDARD_BREAKERS.find((one) => isAtMost(needed, one));
  return size === undefined
    ? {
        ok: false,
        refusal: createRefusal(breakerSizeRecord, 'breaker-not-held', {
          currentA: inputs.currentA,
          neededA: needed,
          mostA: Math.max(...STANDARD_BREAKERS),
        }),
      }
    : { ok: true, value: size };
}

/** Standard ratings in amperes that a door machine can need. */
export const STANDARD_BREAKERS: readonly number[] = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100];

const also = 'ratings up to 100 A are held; above, the code itself';

const list = 'NEC 240.6(A), 2020 and 2023, as two independent listings give it';
const at = (currentA: number, load: LoadKind): BreakerInputs => ({ currentA, load });

export const breakerSizeRecord: FormulaRecord<BreakerInputs> = {
  id: 'breaker-size',
  title: 'Next standard breaker',
  formula: 'the least standard rating of at least I, or 1.25 I when continuous',
  inputs: {
    currentA: { text: 'Current of the load', unit: 'A', min: 0, max: 100 },
    load: { text: 'Whether it runs three hours or more', choices: LOAD_KINDS },
  },
  result: { text: 'Rating', unit: 'A', min: 15, max: 100 },
  also,
  source: [
    { text: `${list}`, documents: ['nec'], confidence: 'secondary' },
    { text: 'NEC 210.20(A): 125 % of a continuous load', documents: ['nec'], confidence: 'secondary' },
  ],
  examples: [
    { kind: 'source', from: `${list}: after 50 A comes 60 A`, inputs: at(50.5, 'not-continuous'), result: 60, tolerance: 0 },
    { kind: 'regression', from: '40.25 A continuous: 50.31, so 60 A', inputs: at(40.25, 'continuous'), result: 60, tolerance: 0 },
    { kind: 'regression', from: '66.62 A continuous: 83.27, so 90 A', inputs: at(66.62, 'continuous'), result: 90, tolerance: 0 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1160, formulas: [formula(breakerSizeRecord, breakerSize)] }];
