import type { FormulaResult } from '../record';

/** One number out of an answer that holds several. */
export const pick = <T, U>(outcome: FormulaResult<T>, choose: (value: T) => U): FormulaResult<U> =>
  outcome.ok ? { ok: true, value: choose(outcome.value) } : outcome;
