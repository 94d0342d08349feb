import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import {
  FIXTURE_DEMANDS,
  heaterInput,
  INSTANT_HEATER_FLOW,
  INSTANT_HEATER_WATER,
  instantDemand,
  STORAGE_SHARES,
  sinkVolume,
} from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

// source: California Conference of Directors of Environmental Health, hot-water demand table · read · exact
describe('demand of a fixture', () => {
  test.each([
    ['pre-rinse', 45],
    ['utensil-sink-small', 14],
    ['utensil-sink-large', 25],
    ['bar-sink', 6],
    ['hand-sink', 5],
    ['preparation-sink', 5],
    ['janitor-sink', 15],
    ['shower', 20],
  ])('%s: %d gph', (id, gph) => {
    const found = FIXTURE_DEMANDS.find((one) => one.id === id);
    expect(fromSI(found?.demandM3S ?? Number.NaN, 'gph')).toBeCloseTo(gph, 9);
  });

  test('there is none for a dish machine: its own sheet says', () => expect(FIXTURE_DEMANDS).toHaveLength(8));
});

// source: the same table, share of the demand that a storage heater is sized for · read · exact
test('100, 90 and 80 %', () => expect(STORAGE_SHARES).toEqual({ heavy: 1, moderate: 0.9, 'single-service': 0.8 }));

// source: the same table, bowls 10 in deep · read · 0.5 gal; by its formula 14.06 and 25.00 · 0.005 gal
test.each([
  [18, 14, 14.06],
  [24, 25, 25],
])('a bowl of %d in square: %d gal', (side, printed, exact) => {
  const gallons = fromSI(valueOf(sinkVolume({ lengthM: side * 0.0254, widthM: side * 0.0254, depthM: 0.254 })), 'gal');
  expect(Math.abs(gallons - printed)).toBeLessThan(0.5);
  expect(Math.abs(gallons - exact)).toBeLessThan(0.005);
});

// source: the same table: kW = gph × 0.149 at 60 °F · read · 0.5 %
test.each([1, 24, 93, 265])('%d gph electric', (gph) => {
  const watts = valueOf(heaterInput({ demandM3S: toSI(gph, 'gph'), riseK: toSI(60, 'deltaF'), rule: 'electric-98' }));
  expect(Math.abs(watts / 1000 / (gph * 0.149) - 1)).toBeLessThan(0.005);
});

// source: the same table: gas is gph × 60 × 11 · read · exact
test('100 gph gas: 66,000 Btu/h', () => {
  const watts = valueOf(heaterInput({ demandM3S: toSI(100, 'gph'), riseK: toSI(60, 'deltaF'), rule: 'gas-eleven' }));
  expect(fromSI(watts, 'Btu/h')).toBeCloseTo(66_000, 6);
});

// source: the same table: an instantaneous heater gives 120 °F and 2 gpm to each sink · read · exact
test.each([
  ['instant-heater-water', toSI(120, 'F'), toSI(119, 'F')],
  ['instant-heater-flow', toSI(2, 'gpm'), toSI(1.9, 'gpm')],
])('%s', (id, enough, short) => {
  const found = [INSTANT_HEATER_WATER, INSTANT_HEATER_FLOW].find((one) => one.id === id);
  expect(found && [judge(found, enough), judge(found, short)]).toEqual(['pass', 'low']);
});

// source: the same table: 2 gpm to each sink · read · exact; the sum is this project's
test.each([1, 2, 5])('%d sinks at once', (sinks) => {
  expect(fromSI(valueOf(instantDemand({ sinks, rinsesM3S: [] })), 'gpm')).toBeCloseTo(2 * sinks, 9);
});
