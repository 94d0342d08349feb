import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { HEAT_UNITS } from '../../src/topics/heat';
import { rackRate } from '../../src/topics/line';
import { rackWater } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const cycle = (washS: number, loadS: number, racksPerCycle = 1) => valueOf(rackRate({ racksPerCycle, washS, rinseS: 0, dwellS: 0, loadS }));

// regression: from NSF/ANSI 3 listings, preface, 8 March 2025 (read): 3600 · NR / TC, load time 5 s · computed · 1e-4
describe('3600 · NR / TC', () => {
  test.each([
    [50, 65.4545],
    [55, 60],
    [60, 55.3846],
    [90, 37.8947],
    [45, 72],
  ])('%d s and 5 s: %d racks/h', (washS, expected) => expect(Math.abs(cycle(washS, 5) - expected)).toBeLessThan(1e-4));

  // source: the preface: racks in a cycle, and what the total cycle is made of · read · exact
  test('two racks in a cycle are twice as many', () => expect(cycle(55, 5, 2)).toBeCloseTo(120, 9));

  test('every part of the cycle counts alike', () => {
    expect(valueOf(rackRate({ racksPerCycle: 1, washS: 40, rinseS: 10, dwellS: 5, loadS: 5 }))).toBeCloseTo(60, 9);
  });
});

// regression: gallons per cycle times racks per hour · computed · 1e-3 and 0.05 gal
test.each([
  [0.75, 55.3846, 41.538, 1e-3],
  [0.89, 55.4, 49.3, 0.05],
  [0.89, 60, 53.4, 0.05],
])('%d gal at %d racks/h: %d gal/h', (gallons, racks, expected, tolerance) => {
  const water = valueOf(rackWater({ perRackM3: toSI(gallons, 'gal'), racks, fillM3: 0, fills: 0 }));
  expect(Math.abs(fromSI(water, 'gal') - expected)).toBeLessThanOrEqual(tolerance);
});

// source: NSF/ANSI 3 as a comparison with NSF/ANSI 184 restates it · secondary · exact
test.each([
  [3600, 'pass'],
  [3599, 'low'],
] as const)('%d heat units at the surface: %s', (units, expected) => expect(judge(HEAT_UNITS, units)).toBe(expected));
