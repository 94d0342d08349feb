import type { Check } from './types';

/** Every check, in the order of the manual: the line first, then its joints and water, then the room and its air. */
export const CHECKS: readonly Check[] = [];
