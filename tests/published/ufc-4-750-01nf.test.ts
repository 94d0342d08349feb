import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { CEILING_MILITARY } from '../../src/topics/cleanliness';
import { SUPPLY_WATER } from '../../src/topics/heat';
import { LIGHT_MILITARY } from '../../src/topics/people';
import { SUPPLY_HARDNESS } from '../../src/topics/water';
import { toSI } from '../../src/units';

// source: UFC 4-750-01NF (16 Apr 2004) 6-2.3.2 · read · exact
describe('supply of a dish machine', () => {
  test.each([
    [140, 'pass'],
    [139.9, 'low'],
  ] as const)('%d °F: %s', (f, expected) => expect(judge(SUPPLY_WATER, toSI(f, 'F'))).toBe(expected));

  test('140 °F is printed as 60 °C', () => expect(SUPPLY_WATER.min).toBeCloseTo(60, 9));

  test.each([
    [6, 'pass'],
    [6.1, 'high'],
    [2, 'pass'],
    [1.9, 'low'],
  ] as const)('%d gpg: %s', (gpg, expected) => expect(judge(SUPPLY_HARDNESS, toSI(gpg, 'gpg'))).toBe(expected));
});

// source: UFC 4-750-01NF 6-2.3.1: ceiling of 9 ft · read · exact
test.each([
  [9, 'pass'],
  [8.9, 'low'],
] as const)('ceiling of %d ft: %s', (feet, expected) => expect(judge(CEILING_MILITARY, feet * 0.3048)).toBe(expected));

// source: UFC 4-750-01NF 4-4.2: 70 to 100 fc · read · exact
test.each([
  [69, 'low'],
  [70, 'pass'],
  [100, 'pass'],
  [101, 'high'],
] as const)('%d fc: %s', (fc, expected) => expect(judge(LIGHT_MILITARY, toSI(fc, 'fc'))).toBe(expected));
