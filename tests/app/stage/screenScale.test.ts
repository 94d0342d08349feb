import { expect, test } from 'vitest';
import { deriveDenominator, PX_PER_PAPER_MM } from '../../../src/app/stage/screenScale';

test.each([
  { scale: 4, denominator: 1 },
  { scale: 0.25, denominator: 16 },
  { scale: 0.125, denominator: 32 },
  // A small zoom keeps the step that lies nearest: a quarter of a doubling.
  { scale: 0.25 * 1.08, denominator: 16 },
  { scale: 0.25 / 1.08, denominator: 16 },
  { scale: 0.25 / 1.1, denominator: 16 * 2 ** 0.25 },
  { scale: 0.25 * 1.1, denominator: 16 / 2 ** 0.25 },
])('at $scale px to the millimetre the paper is 1 to $denominator', ({ scale, denominator }) => {
  expect(PX_PER_PAPER_MM).toBe(4);
  expect(deriveDenominator(scale)).toBeCloseTo(denominator, 9);
});
