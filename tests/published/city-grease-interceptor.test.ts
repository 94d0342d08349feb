import { expect, test } from 'vitest';
import { greaseInterceptor } from '../../src/topics/drain';
import { fromSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// regression: from one city's rule by a public register: units × 3 gpm × 12 min, at least 100 gal, 500 gal with a dish machine (secondary) · computed · exact
test.each([
  [20, 'with-dish-machine', 720],
  [10, 'with-dish-machine', 500],
  [10, 'without', 360],
  [2, 'without', 100],
] as const)('%d units, %s: %d gal', (fixtureUnits, machine, gallons) => {
  expect(fromSI(valueOf(greaseInterceptor({ fixtureUnits, machine })), 'gal')).toBeCloseTo(gallons, 9);
});
