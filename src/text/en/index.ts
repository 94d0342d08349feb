import type { Language } from '../wording';
import { rules } from './rules';

/** Plain US English. */
export const EN: Language = { ...rules };
