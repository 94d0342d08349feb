import { describe, expect, test } from 'vitest';
import { findFixtureValue, fixtureUnitsOfFlow } from '../../src/topics/drain';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

// source: UPC fixture table in a public file · secondary · exact
describe('fixture values', () => {
  test.each([
    ['disposer', 3, 2],
    ['sink-with-food-waste', 3, 1.5],
    ['special-sink-1.5', 3, 1.5],
    ['special-sink-2', 4, 2],
    ['special-sink-3', 6, 3],
    ['floor-drain', 2, 2],
    ['domestic-dish-machine', 2, 1.5],
  ])('%s: %d DFU, trap of %d in', (fixture, units, trap) => {
    const found = findFixtureValue('upc', fixture);
    expect(found?.units).toBe(units);
    expect((found?.trapM ?? Number.NaN) / INCH).toBeCloseTo(trap, 9);
  });

  test('there is no row for a commercial dish machine', () => expect(findFixtureValue('upc', 'dish-machine')).toBeNull());
});

const units = (gpm: number, rule: 'upc' | 'upc-intermittent') => fixtureUnitsOfFlow({ flowM3S: toSI(gpm, 'gpm'), rule });

// memory: UPC 702.3 and Table 702.2(2), unchecked · memory · exact
test('2 DFU a gpm when continuous; bands when intermittent', () => {
  expect(valueOf(units(20, 'upc'))).toBeCloseTo(40, 9);
  expect(valueOf(units(7.5, 'upc-intermittent'))).toBe(1);
  expect(valueOf(units(8, 'upc-intermittent'))).toBe(2);
  expect(valueOf(units(15, 'upc-intermittent'))).toBe(2);
  expect(units(15.1, 'upc-intermittent')).toMatchObject({ ok: false, refusal: { code: 'flow-not-held' } });
});
