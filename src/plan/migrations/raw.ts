/** JSON that has not been checked yet. */
export type Raw = Record<string, unknown>;

/** What is no object or list is left as it is: the schema then refuses it by its place. */
export const change = (value: unknown, to: (value: Raw) => Raw) =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? to(value as Raw) : value;
export const each = (list: unknown, to: (value: Raw) => Raw) => (Array.isArray(list) ? list.map((item) => change(item, to)) : list);

export const nulls = (...keys: string[]): Raw => Object.fromEntries(keys.map((key) => [key, null]));
