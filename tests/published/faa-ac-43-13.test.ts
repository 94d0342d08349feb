import { describe, expect, test } from 'vitest';
import { voltageDrop } from '../../src/topics/power';
import { valueOf } from '../support/valueOf';

const FOOT = 0.3048;

// source: FAA AC 43.13-1B CHG 1 (9/27/01), Tables 11-7 and 11-8, aircraft wire at 20 °C · read · 0.5 %
// Left out: the rows of No. 12 (rounded up in print) and of 19.5 ft (an error in print).
describe('ohm/ft × ft × A, one conductor', () => {
  test.each([
    ['row 1', 0.00044, 107, 0.942],
    ['row 2', 0.00028, 90, 0.504],
    ['row 4', 0.00306, 100, 6.12],
    ['row 5', 0.00126, 39, 0.98],
    ['row 6', 0.00126, 156, 3.93],
    ['row 7', 0.00126, 273, 6.88],
  ])('%s: %d ohm/ft, %d ft, 20 A: %d V', (_row, ohmPerFoot, feet, printed) => {
    const drop = voltageDrop({
      currentA: 20,
      lengthM: feet * FOOT,
      resistanceOhmPerM: ohmPerFoot / FOOT,
      reactanceOhmPerM: 0,
      powerFactor: 1,
      circuit: 'one-conductor',
    });
    expect(Math.abs(valueOf(drop) / printed - 1)).toBeLessThan(0.005);
  });
});

// source: trade column: twice for a single phase, 1.732 times for three · secondary · 0.1 %
// source: UFC 3-520-01, 10 June 2002, B-2.1: I (R cos + X sin), 36.9° where it is not known · read · 0.1 %
test.each([
  ['single-phase', 2],
  ['three-phase', 1.732],
] as const)('%s is %d times one conductor', (circuit, factor) => {
  const run = {
    currentA: 40,
    lengthM: 30,
    resistanceOhmPerM: 0.0016,
    reactanceOhmPerM: 0.0002,
    powerFactor: Math.cos((36.9 * Math.PI) / 180),
  };
  const one = 40 * 30 * (0.0016 * 0.8 + 0.0002 * 0.6);
  expect(Math.abs(valueOf(voltageDrop({ ...run, circuit })) / (factor * one) - 1)).toBeLessThan(0.001);
});
