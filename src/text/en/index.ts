import type { Language } from '../wording';
import { air } from './air';
import { capacity } from './capacity';
import { cleanliness } from './cleanliness';
import { drain } from './drain';
import { duct } from './duct';
import { heat } from './heat';
import { hood } from './hood';
import { line } from './line';
import { people } from './people';
import { power } from './power';
import { room } from './room';
import { rules } from './rules';
import { water } from './water';

/** Plain US English. */
export const EN: Language = {
  ...rules,
  ...room,
  ...hood,
  ...line,
  ...power,
  ...drain,
  ...water,
  ...heat,
  ...capacity,
  ...air,
  ...duct,
  ...people,
  ...cleanliness,
};
