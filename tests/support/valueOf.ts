import { type FormulaResult, refusalSentence } from '../../src/rules';

/** The answer, or an error with the reason of the refusal. */
export function valueOf<T>(outcome: FormulaResult<T>): T {
  if (!outcome.ok) throw new Error(refusalSentence(outcome.refusal));
  return outcome.value;
}
