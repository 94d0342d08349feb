import { type FormulaResult } from '../../src/rules';
import { refusalSentence } from '../../src/text';

/** The answer, or an error with the reason of the refusal. */
export function valueOf<T>(outcome: FormulaResult<T>): T {
  if (!outcome.ok) throw new Error(refusalSentence(outcome.refusal));
  return outcome.value;
}
