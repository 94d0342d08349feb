import { type HoldingMessages, refusalWords } from '../../rules';
import type { Wording } from '../wording';

/** What every rule may say of a figure that is not known. */
export const rules: Wording<HoldingMessages> = {
  'rule/to-know': ({ what, ask }, _f, tell) => `To know ${tell(what)}, say the ${tell(ask)}.`,
  'rule/to-hold-against': ({ what, ask }, _f, tell) => `To hold it against ${tell(what)}, say the ${tell(ask)}.`,
  'rule/not-worked-out': ({ what, refusal }, f, tell) =>
    `Can’t work out ${tell(what)}: ${refusal === null ? 'an input is missing' : refusalWords(refusal, f)}.`,
};
