import { expect, test } from 'vitest';
import { rackWater, sprayWater } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// regression: from EPA, WaterSense at Work, 832-F-12-034 (Oct 2012), equation 4-16 with its 200 min a day (read) · computed · exact
test.each([
  [1.6, 116_800],
  [1.28, 93_440],
  [4.5, 328_500],
  [1.3, 94_900],
])('a valve of %d gpm: %d gal a year', (gpm, expected) => {
  expect(fromSI(valueOf(sprayWater({ flowM3S: toSI(gpm, 'gpm'), openS: 12_000, days: 365 })), 'gal')).toBeCloseTo(expected, 6);
});

// regression: from the same, equation 4-22: gallons a rack × racks a day × days (read) · computed · 1 gal
test('280 racks a day at 0.89 gal: 90,958 gal a year', () => {
  const year = valueOf(rackWater({ perRackM3: toSI(0.89, 'gal'), racks: 280 * 365, fillM3: 0, fills: 0 }));
  expect(Math.abs(fromSI(year, 'gal') - 90_958)).toBeLessThan(1);
});
