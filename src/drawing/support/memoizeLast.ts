/**
 * Remembers the last few answers of a pure function, by the identity of a key's parts. For drawings of the
 * whole plan, of which only the newest matter; a drawing of one thing is kept with the thing (`memoizeByIdentity`).
 */
export function memoizeLast<Key extends readonly unknown[], A extends readonly unknown[], R>(
  derive: (...key: Key) => R,
  keyOf: (...args: A) => Key,
  kept = 3,
): (...args: A) => R {
  const entries: { key: Key; value: R }[] = [];
  return (...args) => {
    const key = keyOf(...args);
    const found = entries.find((entry) => entry.key.every((part, i) => part === key[i]));
    if (found !== undefined) return found.value;
    const value = derive(...key);
    entries.unshift({ key, value });
    entries.length = Math.min(entries.length, kept);
    return value;
  };
}
