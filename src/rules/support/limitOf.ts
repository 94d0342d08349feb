import type { Limit } from '../limit';

/** The one bound of a limit, in its own unit. */
export const boundOf = ({ min, max }: Limit): number => min ?? max ?? Number.NaN;

/** The one bound of a length, in millimetres. */
export const lengthOf = (limit: Limit): number => boundOf(limit) * 1000;
