import { MM_PER_FOOT, MM_PER_INCH } from '../../units';

/** So many inches in metres. Rules print inches and keep them; the rounded metres beside them do not count. */
export const inches = (count: number): number => (count * MM_PER_INCH) / 1000;

/** So many feet in metres. */
export const feet = (count: number): number => (count * MM_PER_FOOT) / 1000;
