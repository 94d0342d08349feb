import { expect, test } from 'vitest';
import { isAtLeast, isAtMost } from '../../src/units';

test.each([
  ['on the limit', 5, 5, undefined, true],
  ['above by the rounding of a conversion', 5 + 4e-9, 5, undefined, true],
  ['above by more', 5 + 6e-9, 5, undefined, false],
  ['below 0, where the rounding is as large', -5 + 4e-9, -5, undefined, true],
  ['above 0 by anything', 1e-15, 0, undefined, false],
  ['above 0 within the slack', 9e-7, 0, 1e-6, true],
  ['above 0 beyond the slack', 1.1e-6, 0, 1e-6, false],
  ['no number', Number.NaN, 5, undefined, false],
])('%s', (_name, value, limit, slack, holds) => {
  expect(isAtMost(value, limit, slack)).toBe(holds);
  expect(isAtLeast(-value, -limit, slack)).toBe(holds);
});
