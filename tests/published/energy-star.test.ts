import { describe, expect, test } from 'vitest';
import { EFFICIENCY_CRITERIA, findEfficiencyCriterion } from '../../src/topics/water';
import { fromSI } from '../../src/units';

const find = (version: string, machine: string, sanitizing: string) =>
  EFFICIENCY_CRITERIA.find((one) => one.version === version && one.machine === machine && one.sanitizing === sanitizing);

// source: ENERGY STAR 1.0, EPA key product criteria, effective 11 Oct 2007 · read · exact
describe('version 1.0', () => {
  test.each([
    ['door', 'hot-water', 1000, 0.95],
    ['door', 'chemical', 600, 1.18],
    ['undercounter', 'hot-water', 900, 1],
    ['undercounter', 'chemical', 500, 1.7],
  ])('%s, %s: idle %d W, %d gal', (machine, sanitizing, idleW, gallons) => {
    const found = find('1.0', machine, sanitizing);
    expect(found?.idleW).toBe(idleW);
    expect(fromSI(found?.perRackM3 ?? 0, 'gal')).toBeCloseTo(gallons, 9);
    expect(found?.source.confidence).toBe('read');
  });
});

// source: ENERGY STAR 3.0: 0.89 gal a rack of a door machine, as a public file restates it · secondary · exact
test('version 3.0: 0.89 gal', () => expect(fromSI(find('3.0', 'door', 'hot-water')?.perRackM3 ?? 0, 'gal')).toBeCloseTo(0.89, 9));

// memory: ENERGY STAR 2.0 and 3.0, other values, unchecked · memory · exact
describe('later versions, from memory', () => {
  test.each([
    ['2.0', 'hot-water', 700, null],
    ['2.0', 'chemical', 600, null],
    ['3.0', 'hot-water', 550, 0.35],
    ['3.0', 'chemical', 600, 0.15],
  ])('%s, %s: idle %d W, wash %s kWh', (version, sanitizing, idleW, washKwh) => {
    const found = find(version, 'door', sanitizing);
    expect(found?.idleW).toBe(idleW);
    expect(found?.washJ === null || found === undefined ? null : fromSI(found.washJ, 'kWh')).toBe(washKwh);
    expect(found?.source.confidence).toBe('memory');
  });
});

test('the newest stands for a kind', () => {
  expect(findEfficiencyCriterion({ machine: 'door', sanitizing: 'chemical' })?.version).toBe('3.0');
  expect(findEfficiencyCriterion({ machine: 'undercounter', sanitizing: 'chemical' })?.version).toBe('1.0');
});
