import { type Formula, type Refusal } from '../../src/rules';
import { refusalSentence } from '../../src/text';

/** Whether a refusal is the bound on several inputs that the record tells of. Two curves that do not meet say why, each in its own words. */
export const isBound = ({ id, also }: Formula['record'], refusal: Refusal): boolean =>
  id === 'fan-operating-point' && refusal.formula === id
    ? refusal.code !== 'out-of-range'
    : refusalSentence(refusal).includes(also ?? 'no bound on several inputs');
