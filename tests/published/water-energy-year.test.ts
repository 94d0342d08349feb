import { describe, expect, test } from 'vitest';
import { waterHeating } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const kWh = (gallons: number, riseF: number, constants: 'sizing' | 'energy-data') =>
  fromSI(valueOf(waterHeating({ waterM3: toSI(gallons, 'gal'), riseK: toSI(riseF, 'deltaF'), efficiency: 0.98, constants })), 'kWh');

// source: yearly figures of a door machine, all-electric, in a public file; formula by fit · read · 1 kWh
describe('water and energy of a year', () => {
  test.each([
    ['hot water, conventional', 37_565, 110, 10_130],
    ['hot water, efficient', 25_917, 110, 6989],
    ['chemical, conventional', 61_152, 70, 10_494],
    ['chemical, efficient', 34_362, 70, 5897],
  ])('%s: %d gal by %d °F are %d kWh', (_row, gallons, rise, expected) => {
    expect(Math.abs(kWh(gallons, rise, 'energy-data') - expected)).toBeLessThan(1);
  });
});

// regression: the same with 8.33 lb and 3412 Btu · computed · 1 kWh
test('the constants of the sizing forms give 1.6 % more', () => {
  expect(Math.abs(kWh(37_565, 110, 'sizing') - 10_294)).toBeLessThan(1);
});
