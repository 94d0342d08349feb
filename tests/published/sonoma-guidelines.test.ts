import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { CLEAN_WARE_HEIGHT } from '../../src/topics/cleanliness';
import { LIGHT_UTENSILS } from '../../src/topics/people';
import { toSI } from '../../src/units';

// source: Sonoma County CA, floor plan and lighting guidelines: 50 fc where utensils are worked with · read · exact
test.each([
  [50, 'pass'],
  [49, 'low'],
] as const)('%d fc: %s', (fc, expected) => expect(judge(LIGHT_UTENSILS, toSI(fc, 'fc'))).toBe(expected));

// source: the same guidelines: lowest shelf 6 in above the floor · read · exact
test.each([
  [6, 'pass'],
  [5.9, 'low'],
] as const)('%d in above the floor: %s', (inches, expected) => expect(judge(CLEAN_WARE_HEIGHT, inches * 0.0254)).toBe(expected));
