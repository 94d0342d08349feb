import { expect, test } from 'vitest';
import { demandAfterStorage, heaterInput } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// regression: from Monterey County CA, form PC-HWH (read): gph × 8.33 × rise / 0.7, its 60 and 80 °F · computed · 0.05 Btu/h
test.each([
  [60, 714],
  [80, 952],
])('1 gph by %d °F: %d Btu/h', (rise, expected) => {
  const watts = valueOf(heaterInput({ demandM3S: toSI(1, 'gph'), riseK: toSI(rise, 'deltaF'), rule: 'gas-70' }));
  expect(Math.abs(fromSI(watts, 'Btu/h') - expected)).toBeLessThan(0.05);
});

// regression: from Monterey County CA, form PC-HWH (read): Qs = 0.7 s/d, Qn = Qt − Qs · computed · exact
test.each([
  [100, 100, 2, 65],
  [100, 100, 1, 30],
  [20, 100, 1, 0],
])('%d gph with a tank of %d gal over %d h: %d gph are left', (gph, tank, hours, expected) => {
  const left = valueOf(demandAfterStorage({ demandM3S: toSI(gph, 'gph'), tankM3: toSI(tank, 'gal'), peakS: hours * 3600 }));
  expect(fromSI(left, 'gph')).toBeCloseTo(expected, 9);
});
