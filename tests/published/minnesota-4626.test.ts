import { expect, test } from 'vitest';
import { MANUAL_SANITIZING_TIME, UTENSIL_SURFACE } from '../../src/engineering';
import { fromSI } from '../../src/units';

// source: W-F7 · Minnesota Rules 4626.0905, version of 2014-01-18 · read · exact
test('by hand at least 30 s in hot water', () => expect(MANUAL_SANITIZING_TIME.min).toBe(30));

// source: W-F8 · Minnesota Rules 4626.0905 (Food Code 4-703.11(B)) · read · exact °F, whole °C as printed
test('160 °F (71 °C) at the surface of utensils', () => {
  expect(fromSI(UTENSIL_SURFACE.min ?? 0, 'F')).toBeCloseTo(160, 9);
  expect(Math.round(UTENSIL_SURFACE.min ?? 0)).toBe(71);
});
