import { expect } from 'vitest';

/** The same data, its numbers as far as eight decimals: what geometry works out carries the dust of binary arithmetic. */
export function nearly<T>(value: T): T {
  if (typeof value === 'number') return (Number.isFinite(value) ? expect.closeTo(value, 8) : value) as T;
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(nearly) as T;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, nearly(part)])) as T;
}
