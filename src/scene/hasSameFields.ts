/** Whether two objects have the same fields. They are compared by identity, which edits of a plan keep. */
export function hasSameFields<T extends object>(one: T, other: T): boolean {
  if (one === other) return true;
  for (const key in one) if (one[key] !== other[key]) return false;
  for (const key in other) if (!(key in one)) return false;
  return true;
}
