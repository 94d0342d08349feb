import { expect, test } from 'vitest';
import { OLDER_SPRAY_VALVE, SPRAY_OPEN_TIME, sprayValveLimit } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// source: 10 CFR 431.266, valves made from 28 January 2019, a copy of the eCFR · read · exact
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

// source: the same, valves made from 2006 to 27 January 2019 · read · exact
test('before: 1.6 gpm', () => expect(fromSI(OLDER_SPRAY_VALVE.max ?? 0, 'gpm')).toBeCloseTo(1.6, 12));

// source: EPA, WaterSense at Work, 832-F-12-034 (Oct 2012) · read · exact
test('open for 200 min a day at most, as a rule', () => expect(SPRAY_OPEN_TIME.max).toBe(12_000));
