import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { HEAD_HEIGHT } from '../../src/scene';
import { EXIT_HEIGHT, EXIT_PROJECTION, EXIT_WIDTH } from '../../src/topics/room';

const INCH = 0.0254;

// source: 29 CFR 1910.36(g)(2), OSHA interpretation of 27 Nov 1978 · read · exact
test.each([
  [28, 'pass'],
  [27.99, 'low'],
] as const)('exit access of %d in: %s', (inches, expected) => expect(judge(EXIT_WIDTH, inches * INCH)).toBe(expected));

// source: the same, printed beside it as 71.1 cm · read · 0.1 cm
test('71.1 cm', () => expect((EXIT_WIDTH.min ?? 0) * 100).toBeCloseTo(71.1, 1));

// source: 29 CFR 1910.36(g)(1) as nffs.org quotes it: 7 ft 6 in (2.3 m) · secondary · exact
test.each([
  [90, 'pass'],
  [89.9, 'low'],
] as const)('exit ceiling of %d in: %s', (inches, expected) => {
  expect(judge(EXIT_HEIGHT, inches * INCH)).toBe(expected);
  expect(EXIT_HEIGHT.min).toBeCloseTo(2.3, 1);
});

// source: the same as nffs.org quotes it: a projection leaves 6 ft 8 in (2.0 m) · secondary · exact
test.each([
  [80, 'pass'],
  [79.9, 'low'],
] as const)('what projects at %d in: %s', (inches, expected) => {
  expect(judge(EXIT_PROJECTION, inches * INCH)).toBe(expected);
  expect(EXIT_PROJECTION.min).toBeCloseTo(2.0, 1);
  // What stops a walking person in the plan is the same height.
  expect(HEAD_HEIGHT).toBeCloseTo(80 * 25.4, 9);
});
