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
 * Maps a list member by member, and takes over what it made of the members that stand where they stood in the last list, while the
 * context is the same object. For lists of many of which nobody asks the identity: a memory of each member costs more to fill than
 * most of them to make.
 */
export function createListMap<T, R, C>(make: (item: T, context: C) => R): (items: readonly T[], context: C) => R[] {
  // Lists of its own: the one that is given may be a draft, which is gone by the next time.
  let lastItems: T[] = [];
  let lastMade: R[] = [];
  let lastContext: C | undefined;
  return (items, context) => {
    const kept = lastContext === context ? lastItems.length : 0;
    const seen: T[] = [];
    const made: R[] = [];
    for (let i = 0; i < items.length; i++) {
      const item = items[i] as T;
      seen.push(item);
      made.push(i < kept && lastItems[i] === item ? (lastMade[i] as R) : make(item, context));
    }
    lastItems = seen;
    lastMade = made;
    lastContext = context;
    return made;
  };
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
