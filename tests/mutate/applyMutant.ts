import type { Mutant } from './types';

/** The source with the fault in it. */
export const applyMutant = (text: string, { start, end, replacement }: Mutant): string =>
  text.slice(0, start) + replacement + text.slice(end);
