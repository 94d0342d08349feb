/** A plain deep copy of plain data, a draft or not. */
export const copyOf = <T>(item: T): T => JSON.parse(JSON.stringify(item)) as T;
