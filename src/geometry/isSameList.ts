/** Whether two lists have the same members in the same order; by identity, unless told how to compare them. */
export function isSameList<T>(one: readonly T[], other: readonly T[], isSame?: (a: T, b: T) => boolean): boolean {
  if (one.length !== other.length) return false;
  for (let i = 0; i < one.length; i++) {
    const a = one[i] as T;
    const b = other[i] as T;
    if (isSame === undefined ? a !== b : !isSame(a, b)) return false;
  }
  return true;
}
