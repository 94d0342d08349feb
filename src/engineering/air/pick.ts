import type { Outcome } from '../record';

/** One number out of an answer that holds several. */
export const pick = <T, U>(outcome: Outcome<T>, choose: (value: T) => U): Outcome<U> =>
  outcome.ok ? { ok: true, value: choose(outcome.value) } : outcome;
