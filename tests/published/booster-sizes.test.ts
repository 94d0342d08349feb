import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { BOOSTER_CLEAR, BOOSTER_DISTANCE, boosterPower } from '../../src/topics/heat';
import type { HeaterRule } from '../../src/topics/water';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const kW = (gph: number, supplyF: number, rule: HeaterRule) =>
  valueOf(boosterPower({ rinseM3S: toSI(gph, 'gph'), supplyC: toSI(supplyF, 'F'), rinseC: toSI(180, 'F'), rule })) / 1000;

// regression: kW = gph · rise · 8.33 / 3412, and / (0.98 · 3412) by the county form · computed · 0.01 kW
describe('rinse of a door machine from 140 and 110 °F', () => {
  test.each([
    ['row 4', 28, 2.73, 2.79, 4.79, 4.88],
    ['row 5', 44, 4.3, 4.38, 7.52, 7.67],
    ['row 6', 50, 4.88, 4.98, 8.54, 8.72],
    ['row 7', 52, 5.08, 5.18, 8.89, 9.07],
    ['row 8', 64, 6.25, 6.38, 10.94, 11.16],
    ['row 9', 80, 7.81, 7.97, 13.67, 13.95],
    ['row 10', 92, 8.98, 9.17, 15.72, 16.04],
  ])('%s: %d gph', (_row, gph, ...expected) => {
    const found = [kW(gph, 140, 'electric'), kW(gph, 140, 'electric-98'), kW(gph, 110, 'electric'), kW(gph, 110, 'electric-98')];
    found.forEach((value, i) => expect(Math.abs(value - (expected[i] ?? Number.NaN))).toBeLessThan(0.01));
  });
});

// regression: 70 °F over 40 °F of rise · computed · exact
test.each([10, 64, 92])('%d gph: a supply of 110 °F takes 1.75 times as much', (gph) => {
  expect(kW(gph, 110, 'electric') / kW(gph, 140, 'electric')).toBeCloseTo(1.75, 12);
});

// source: Gas Technology Institute, water heating equipment: usually within 5 ft of the machine · read · exact
test.each([
  [5, 'pass'],
  [5.1, 'high'],
] as const)('%d ft from the machine: %s', (feet, expected) => expect(judge(BOOSTER_DISTANCE, feet * 0.3048)).toBe(expected));

// source: restated without its origin: a booster below the drainboard is at least 6 in above the floor · secondary · exact
test.each([
  [6, 'pass'],
  [5.9, 'low'],
] as const)('%d in above the floor: %s', (inches, expected) => expect(judge(BOOSTER_CLEAR, inches * 0.0254)).toBe(expected));
