import { expect, test } from 'vitest';
import { DRYING_PLACES_CHEMICAL, DRYING_PLACES_HOT, dryingRacks, judge } from '../../src/engineering';
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

// source: W-F17 · City of Orono MN, plan review letter of 6 Apr 2000 · read · exact
test.each([
  [DRYING_PLACES_HOT, 3, 'pass'],
  [DRYING_PLACES_HOT, 2, 'low'],
  [DRYING_PLACES_CHEMICAL, 5, 'pass'],
  [DRYING_PLACES_CHEMICAL, 4, 'low'],
] as const)('$title: %d is %s', (limit, places, expected) => expect(judge(limit, places)).toBe(expected));
