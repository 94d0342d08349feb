import { expect, test } from 'vitest';
import { sprayValveLimit } from '../../src/engineering';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// source: W-EN6 · 10 CFR 431.266, valves made from 28 January 2019, a copy of the eCFR · read · exact
test.each([
  [4, 1],
  [5, 1],
  [5.1, 1.2],
  [8, 1.2],
  [8.1, 1.28],
  [12, 1.28],
])('spray of %d ozf: %d gpm', (ounces, gpm) => {
  expect(fromSI(valueOf(sprayValveLimit({ forceN: toSI(ounces / 16, 'lbf') })), 'gpm')).toBeCloseTo(gpm, 12);
});
