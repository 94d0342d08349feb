import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { DRYING_PLACES_CHEMICAL, DRYING_PLACES_HOT } from '../../src/topics/cleanliness';

// source: City of Orono MN, plan review letter of 6 Apr 2000 · read · exact
test.each([
  [DRYING_PLACES_HOT, 3, 'pass'],
  [DRYING_PLACES_HOT, 2, 'low'],
  [DRYING_PLACES_CHEMICAL, 5, 'pass'],
  [DRYING_PLACES_CHEMICAL, 4, 'low'],
] as const)('$title: %d is %s', (limit, places, expected) => expect(judge(limit, places)).toBe(expected));
