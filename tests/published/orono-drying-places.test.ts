import { expect, test } from 'vitest';
import { dryingRacks } from '../../src/engineering';
import { valueOf } from '../support/valueOf';

// source: W-F17 · City of Orono MN, plan review letter of 6 Apr 2000: 3 drying places after hot water, 5 after chemicals · read
// regression: L-CT9 · 55.3846 racks/h that dry 3 and 5 min come to the same · computed · 1e-3
test.each([
  [3, 2.769, 3],
  [5, 4.615, 5],
])('%d min: %d racks on the average, %d places', (minutes, racks, places) => {
  const found = valueOf(dryingRacks({ racksPerH: 55.3846, dryingS: minutes * 60 }));
  expect(Math.abs(found - racks)).toBeLessThan(1e-3);
  expect(Math.ceil(found)).toBe(places);
});
