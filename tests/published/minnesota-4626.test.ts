import { expect, test } from 'vitest';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { check as ductWallDry } from '../../src/topics/duct/checks/duct-wall-dry';
import { MANUAL_SANITIZING_TIME, UTENSIL_SURFACE } from '../../src/topics/heat';
import { fromSI, toSI } from '../../src/units';
import { runPlan } from '../support/runPlans';

// source: Minnesota Rules 4626.0905, version of 2014-01-18 · read · exact
test('by hand at least 30 s in hot water', () => expect(MANUAL_SANITIZING_TIME.min).toBe(30));

// source: Minnesota Rules 4626.0905 (Food Code 4-703.11(B)) · read · exact °F, whole °C as printed
test('160 °F (71 °C) at the surface of utensils', () => {
  expect(fromSI(UTENSIL_SURFACE.min ?? 0, 'F')).toBeCloseTo(160, 9);
  expect(Math.round(UTENSIL_SURFACE.min ?? 0)).toBe(71);
});

// source: Minnesota Rules 4626.0565 (2019), Food Code 4-204.11: ducts where ware is washed let no condensate drip · read · exact
test.each([
  ['bare', 0, 'watch'],
  ['under 1½ in of insulation', 38.1, 'clear'],
] as const)('moist exhaust in a cold attic, its duct %s: %s', (_name, insulation, expected) => {
  const duct = { exhaustC: toSI(95, 'F'), exhaustHumidity: 0.7, insulation };
  const plan = runPlan([[0, 0, 3000]], duct, ({ air }) => void (air.ductAirC = toSI(40, 'F')));
  expect(runChecks(deriveScene(plan), [ductWallDry]).map(({ verdict }) => verdict)).toEqual([expected]);
});
