import { isAtLeast, isAtMost } from '../units';
import type { FormulaSource } from './record';
import type { RecordUnit } from './recordUnit';

/** A lower and an upper bound; null where there is none. */
export interface Band {
  min: number | null;
  max: number | null;
}

/** A bound out of a document, in SI, with the place where it stands. */
export interface Limit extends Band {
  /** Kebab-case and permanent. */
  id: string;
  title: string;
  unit: RecordUnit;
  source: readonly FormulaSource[];
  /** Printed in the manual alone: no check and no figure holds anything against it. */
  isForReference?: true;
}

export type Judgement = 'pass' | 'low' | 'high';

/** How a measured value stands to a band. A bound itself passes; what is no number does not. */
export function judge(band: Band, value: number): Judgement {
  if (band.min !== null && !isAtLeast(value, band.min)) return 'low';
  if (band.max !== null && !isAtMost(value, band.max)) return 'high';
  return Number.isNaN(value) ? 'low' : 'pass';
}

/** The band that lies within both: the higher of the lower bounds, the lower of the upper ones. */
export function narrow(one: Band, other: Band): Band {
  return { min: stricter(one.min, other.min, Math.max), max: stricter(one.max, other.max, Math.min) };
}

const stricter = (a: number | null, b: number | null, choose: (a: number, b: number) => number) =>
  a === null ? b : b === null ? a : choose(a, b);

/** A limit in few words: the bounds that it has, then where it stands. */
export function limit(id: string, title: string, unit: RecordUnit, band: Partial<Band>, ...source: FormulaSource[]): Limit {
  return { id, title, unit, min: band.min ?? null, max: band.max ?? null, source };
}

/** A limit that nothing of a plan is held against; the manual says so. */
export const forReference = (bound: Limit): Limit => ({ ...bound, isForReference: true });
