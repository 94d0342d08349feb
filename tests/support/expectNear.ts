import { expect } from 'vitest';
import type { FormulaResult } from '../../src/rules';
import { valueOf } from './valueOf';

/** How far a value may be from print: so much, or such a part of it. */
export type Tolerance = number | `${number} %`;

/** A computed value agrees with a printed one. What refuses fails with its reason. */
export function expectNear(computed: number | FormulaResult, printed: number, tolerance: Tolerance): void {
  const value = typeof computed === 'number' ? computed : valueOf(computed);
  const allowed = typeof tolerance === 'number' ? tolerance : (Number.parseFloat(tolerance) / 100) * Math.abs(printed);
  // One line says all three, where toBeCloseTo would count decimals.
  expect(Math.abs(value - printed) <= allowed, `${value} is not within ${tolerance} of ${printed}`).toBe(true);
}
