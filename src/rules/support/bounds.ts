import type { Source } from '../check';

/** One side of what a value may be, and who asks for it. */
export interface Bound {
  value: number;
  relation: 'at-least' | 'at-most';
  /** Whose it is: `the food code`, or an id that the text tables know. */
  by: string;
  source: Source;
}

/** The strictest of the bounds on one side; undefined where that side is free. */
export function strictest<B extends Bound>(bounds: readonly B[], relation: Bound['relation']): B | undefined {
  const isStricter = (one: Bound, other: Bound) => (relation === 'at-least' ? one.value > other.value : one.value < other.value);
  return bounds
    .filter((bound) => bound.relation === relation)
    .reduce<B | undefined>((best, bound) => (best === undefined || isStricter(bound, best) ? bound : best), undefined);
}

/** The bound to hold a value against: the one that it breaks, else the one that it is nearest to; undefined where there is none. */
export function governing<B extends Bound>(bounds: readonly B[], value: number | null): B | undefined {
  const sides = [strictest(bounds, 'at-least'), strictest(bounds, 'at-most')].filter((bound) => bound !== undefined);
  if (value === null) return sides[0];
  return sides.toSorted((a, b) => marginOf(a, value) - marginOf(b, value))[0];
}

const marginOf = (bound: Bound, value: number) => (bound.relation === 'at-least' ? value - bound.value : bound.value - value);
