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
