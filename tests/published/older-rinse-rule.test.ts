import { expect, test } from 'vitest';
import { judgeRinsePressure, OLDER_RINSE_PRESSURE, rinsePressureBand } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';

// source: Minnesota Rules 4630.3000 (2015 copy); Army QM 3510 4-6; a city ordinance · read · exact
test('15 to 25 psi in the line', () => {
  expect(fromSI(OLDER_RINSE_PRESSURE.min ?? 0, 'psi')).toBeCloseTo(15, 9);
  expect(fromSI(OLDER_RINSE_PRESSURE.max ?? 0, 'psi')).toBeCloseTo(25, 9);
});

// regression: the band within both rules · computed · exact
test.each([
  [14, 'older', false],
  [14, 'food-code', true],
  [14, 'stricter', false],
  [28, 'stricter', false],
  [20, 'stricter', true],
] as const)('%d psi by %s: %s', (psi, rule, pass) => {
  expect(judgeRinsePressure(toSI(psi, 'psi'), rule).pass).toBe(pass);
});

test('the stricter band is the older one, for it lies inside the other', () => {
  expect(rinsePressureBand('stricter')).toEqual({ min: OLDER_RINSE_PRESSURE.min, max: OLDER_RINSE_PRESSURE.max });
});
