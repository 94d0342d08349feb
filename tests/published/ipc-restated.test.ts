import { describe, expect, test } from 'vitest';
import { branchUnits, findFixtureValue, fixtureSource, fixtureUnitsOfFlow, receptorUnits } from '../../src/topics/drain';
import { toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;

// source: IPC 709.3 as a how-to page turns it, DFU / 2 = gpm · secondary · exact
test('20 gpm are 40 DFU', () => expect(valueOf(fixtureUnitsOfFlow({ flowM3S: toSI(20, 'gpm'), rule: 'ipc' }))).toBeCloseTo(40, 9));

// source: IPC 710.1, horizontal branch, as question pages quote it · secondary · exact
describe('branch', () => {
  test.each([
    [2, 6],
    [3, 20],
    [4, 160],
  ])('%d in: %d DFU', (size, units) => expect(valueOf(branchUnits({ sizeM: size * INCH, kind: 'branch' }))).toBe(units));

  test('2½ in is for the code itself', () => {
    expect(branchUnits({ sizeM: 2.5 * INCH, kind: 'branch' })).toMatchObject({
      ok: false,
      refusal: { code: 'nominal-size-not-held' },
    });
  });
});

// memory: IPC 710.1(1), building drain, unchecked · memory · exact
test.each([
  [2, 'building-quarter', 21],
  [3, 'building-quarter', 42],
  [4, 'building-quarter', 216],
  [3, 'building-eighth', 36],
  [4, 'building-eighth', 180],
] as const)('building drain of %d in, %s: %d DFU', (size, kind, units) => {
  expect(valueOf(branchUnits({ sizeM: size * INCH, kind }))).toBe(units);
});

// source: IPC 709.1 as a question page quotes it · secondary · exact
test('a floor drain is 2 DFU, with a trap of 2 in', () => {
  const found = findFixtureValue('ipc', 'floor-drain');
  expect(found?.units).toBe(2);
  expect((found?.trapM ?? Number.NaN) / INCH).toBeCloseTo(2, 9);
});

// source: IPC 709.1, note to floor sinks as a question page has it: the load counts · secondary · exact
test('a floor sink has no value of its own, but that of its load', () => {
  expect(findFixtureValue('ipc', 'floor-sink')).toBeNull();
  expect(valueOf(receptorUnits({ fixtures: [30, 3], own: 0 }))).toBe(33);
});

// memory: IPC 709.4: a receptor is no less than its own value, unchecked · memory · exact
test('a floor drain that takes less than its own 2 DFU is 2 DFU', () => expect(valueOf(receptorUnits({ fixtures: [1], own: 2 }))).toBe(2));

// memory: IPC 709.2, fixtures not listed, by trap, unchecked · memory · exact
test.each([
  ['trap-2', 3],
  ['trap-3', 5],
  ['trap-4', 6],
])('%s: %d DFU, said to be from memory', (fixture, units) => {
  expect(findFixtureValue('ipc-trap', fixture)?.units).toBe(units);
  expect(fixtureSource('ipc-trap').confidence).toBe('memory');
});
