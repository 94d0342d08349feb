import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { LIGHT_WASHING } from '../../src/topics/people';
import { toSI } from '../../src/units';

// source: FDA Food Code 6-303.11 by a public register: 20 fc (220 lx) · secondary · exact fc; the printed lux are rounded
test.each([
  [20, 'pass'],
  [19.9, 'low'],
] as const)('%d fc: %s', (fc, expected) => {
  expect(judge(LIGHT_WASHING, toSI(fc, 'fc'))).toBe(expected);
  expect(Math.abs((LIGHT_WASHING.min ?? 0) - 220)).toBeLessThan(5);
});
