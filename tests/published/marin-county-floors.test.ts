import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { FLOOR_FALL_COUNTY } from '../../src/topics/cleanliness';
import { fallOver } from '../../src/topics/drain';
import { valueOf } from '../support/valueOf';

// source: Marin County CA, general requirements: floors 1:50, which it prints as ¼ in/ft · read · whole per cent
test('1:50 falls 20 mm in a metre, ¼ in/ft a little more', () => {
  const fall = (slope: number) => valueOf(fallOver({ lengthM: 1, slope }));
  expect(fall(1 / 50)).toBeCloseTo(0.02, 12);
  expect(Math.round(fall(1 / 48) * 100)).toBe(2);
  // regression: ¼ in/ft is 2.0833 % · computed · exact
  expect(fall(1 / 48) * 100).toBeCloseTo(2.0833, 4);
});

// source: Marin County CA, general requirements: floors 1:50 · read · exact
test.each([
  [1 / 50, 'pass'],
  [1 / 48, 'pass'],
  [1 / 51, 'low'],
] as const)('a fall of %d: %s', (slope, expected) => expect(judge(FLOOR_FALL_COUNTY, slope)).toBe(expected));
