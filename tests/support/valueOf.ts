import type { Outcome } from '../../src/engineering';

/** The answer, or an error with the reason of the refusal. */
export function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.value;
}
