import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { INSTRUMENT_LIMITS } from '../../src/topics/heat';
import { judgePressureGauge } from '../../src/topics/water';
import { convert, toSI } from '../../src/units';

const find = (id: string) => {
  const found = INSTRUMENT_LIMITS.find((limit) => limit.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

// source: CDC Vessel Sanitation Program Operations Manual 2010, 7.5.2 · read · exact °F, °C rounded in print
describe('thermometers', () => {
  test.each([
    [3, 'pass'],
    [-3, 'pass'],
    [3.1, 'high'],
    [-3.1, 'low'],
  ] as const)('%d °F off: %s', (f, expected) => expect(judge(find('thermometer-error'), toSI(f, 'deltaF'))).toBe(expected));

  test.each([
    [2, 'pass'],
    [5, 'high'],
  ] as const)('steps of %d °F: %s', (f, expected) => expect(judge(find('thermometer-step'), toSI(f, 'deltaF'))).toBe(expected));

  test('±1.5 °C and 1 °C as printed beside them are within', () => {
    expect(judge(find('thermometer-error'), 1.5)).toBe('pass');
    expect(judge(find('thermometer-step'), 1)).toBe('pass');
  });
});

// source: CDC Vessel Sanitation Program Operations Manual 2010, 7.5.2.1.2 · read · exact psi, kPa rounded in print
describe('gauge on the rinse line', () => {
  test.each([
    ['gauge-error', 2, 'pass', 14],
    ['gauge-error', 2.1, 'high', 14],
    ['gauge-step', 1, 'pass', 7],
    ['gauge-step', 2, 'high', 7],
  ] as const)('%s of %d psi: %s', (id, psi, expected, printedKpa) => {
    expect(judge(find(id), toSI(psi, 'psi'))).toBe(expected);
    expect(Math.round(convert(find(id).max ?? 0, 'Pa', 'kPa'))).toBe(printedKpa);
  });
});

// source: CDC Vessel Sanitation Program 2018, 13.16.2.1 · read · exact
describe('a gauge where the plate gives a pressure', () => {
  test.each([
    [true, true, true],
    [true, false, false],
    [false, false, true],
    [false, true, true],
  ])('plate with pressure %s, gauge %s: %s', (plate, gauge, pass) => expect(judgePressureGauge(plate, gauge).pass).toBe(pass));
});
