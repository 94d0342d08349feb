import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { supplyAirGap } from '../../src/topics/drain';
import { boosterPower } from '../../src/topics/heat';
import { AISLE_WIDTH } from '../../src/topics/room';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

// regression: from Food Establishment Plan Review Guide 2000, Part 9, one line as a third page quotes it: 64 × 40 × 8.33 / .70 (secondary) · computed · 1 Btu/h
test('booster for 64 gph from 140 to 180 °F: 30,464 Btu/h', () => {
  const watts = valueOf(boosterPower({ rinseM3S: toSI(64, 'gph'), supplyC: 60, rinseC: toSI(180, 'F'), rule: 'gas-70' }));
  expect(Math.abs(fromSI(watts, 'Btu/h') - 30_464)).toBeLessThan(1);
});

// source: Food Establishment Plan Review Guide 2000, Part 12: twice the inlet, at least 1 in · read · exact
describe('air gap: twice the inside diameter, at least 1 in', () => {
  test.each([
    [0.375, 1],
    [0.625, 1.25],
    [1.25, 2.5],
  ])('%d in: %d in', (opening, gap) => {
    expect(valueOf(supplyAirGap({ openingM: opening * INCH, rule: 'food-code' })) / INCH).toBeCloseTo(gap, 9);
  });
});

// source: FDA/CFP Food Establishment Plan Review Guide 2000, Section III Part 6 · read · exact
test.each([
  [36, 'pass'],
  [35.9, 'low'],
] as const)('aisle of %d in: %s', (inches, expected) => expect(judge(AISLE_WIDTH, inches * INCH)).toBe(expected));
