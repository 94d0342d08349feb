import { isSameList } from '../geometry';

/**
 * Remembers what a pure function answered last for each first argument, and gives it again while the
 * other arguments are the same too (by identity). Put first what belongs to one thing alone: what is
 * shared by several would make them forget each other's answers. The first argument is held weakly,
 * so answers go when the plan that they came from goes.
 */
export function memoizeByIdentity<A extends Arguments, R>(derive: (...args: A) => R): (...args: A) => R {
  const answers = new WeakMap<object, Answer<R>>();
  // Written out, since a plan asks a thousand times and a list of arguments would be made each time.
  const ask = (key: object, b: unknown, c: unknown, d: unknown, e: unknown, f: unknown): R => {
    const last = answers.get(key);
    if (last !== undefined && last.b === b && last.c === c && last.d === d && last.e === e && last.f === f) return last.value;
    const value = (derive as unknown as (...args: Arguments) => R)(key, b, c, d, e, f);
    answers.set(key, { b, c, d, e, f, value });
    return value;
  };
  return ask as unknown as (...args: A) => R;
}

/** Six at most. */
type Arguments = readonly [object, unknown?, unknown?, unknown?, unknown?, unknown?];

/** The arguments after the first, and what was answered. */
interface Answer<R> {
  b: unknown;
  c: unknown;
  d: unknown;
  e: unknown;
  f: unknown;
  value: R;
}

/**
 * Gives a list that was only rebuilt the identity of the earlier one with the same members, so that
 * stages which take a list are not derived again. Remembers the last few lists. `isSame` where members are made anew each time.
 */
export function createListKeeper<T>(isSame?: (a: T, b: T) => boolean): (items: T[]) => T[] {
  let lately: T[][] = [];
  return (items) => {
    const kept = lately.find((list) => isSameList(list, items, isSame)) ?? items;
    if (lately[0] !== kept) lately = [kept, ...lately.filter((list) => list !== kept)].slice(0, KEPT_LISTS);
    return kept;
  };
}

/** The plan's and its preview's while something is dragged, and as many again. Each list keeps what is in it from being forgotten. */
const KEPT_LISTS = 4;
