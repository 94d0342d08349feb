import { describe, expect, test } from 'vitest';
import {
  dishMachineRow,
  dishMachineUnits,
  findFixtureValue,
  floorDrainRow,
  judgeAirGapNearWall,
  supplyAirGap,
} from '../../src/topics/drain';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

// source: a municipal plumbing code of about 1965, ecode360 40219343 · read · exact
describe('fixture values', () => {
  test.each([
    ['dish-machine', 4, 2],
    ['dish-machine-to-30-gal', 2, 2],
    ['dish-machine-to-100-gal', 6, 3],
    ['three-compartment-sink', 4, 2],
    ['disposer', 4, 2],
  ])('%s: %d DFU, waste of %d in', (fixture, units, waste) => {
    const found = findFixtureValue('municipal-old', fixture);
    expect(found?.units).toBe(units);
    expect((found?.trapM ?? Number.NaN) / INCH).toBeCloseTo(waste, 9);
  });

  test.each([
    [30, 'dish-machine-to-30-gal'],
    [30.1, 'dish-machine-to-100-gal'],
    [100, 'dish-machine-to-100-gal'],
    [100.1, null],
  ])('a tank of %d gal: %s', (gallons, row) => expect(dishMachineRow(toSI(gallons, 'gal'))).toBe(row));

  test.each([
    [30, 4],
    [31, 6],
    [100, 6],
    [101, null],
  ])('of its rows the larger counts: a tank of %d gal, %d DFU', (gallons, units) => {
    expect(dishMachineUnits(toSI(gallons, 'gal'))).toBe(units);
  });

  test.each([
    [1.5, 'floor-drain-2'],
    [2, 'floor-drain-2'],
    [3, 'floor-drain-3'],
    [4, 'floor-drain-4'],
    [6, 'floor-drain-4'],
  ])('a floor drain of %d in: %s', (size, row) => expect(floorDrainRow(size * INCH)).toBe(row));

  test.each([
    ['floor-drain-2', 3],
    ['floor-drain-3', 4],
    ['floor-drain-4', 6],
  ])('%s: %d DFU', (fixture, units) => expect(findFixtureValue('municipal-old', fixture)?.units).toBe(units));
});

// source: the same code, ecode360 40219290 · read · exact
describe('air gap of a supply', () => {
  test.each([
    [0.5, 1],
    [0.6, 1.5],
    [0.75, 1.5],
    [1, 2],
    [1.25, 2.5],
  ])('%d in: %d in', (opening, gap) => {
    expect(valueOf(supplyAirGap({ openingM: opening * INCH, rule: 'table' })) / INCH).toBeCloseTo(gap, 9);
  });
});

// source: Chico TX 51.117 and Ferris TX plumbing code · read · exact
describe('no correction away from walls', () => {
  test.each([
    ['one wall, 3.1 openings', 3.1, 'one', true],
    ['one wall, 3 openings', 3, 'one', false],
    ['a corner, 4.1 openings', 4.1, 'corner', true],
    ['a corner, 4 openings', 4, 'corner', false],
  ] as const)('%s', (_name, openings, walls, pass) => expect(judgeAirGapNearWall(0.02, openings * 0.02, walls).pass).toBe(pass));
});
