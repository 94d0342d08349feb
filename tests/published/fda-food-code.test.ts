import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { judgeDosing } from '../../src/topics/cleanliness';
import { DIRECT_DRAIN_DISTANCE, judgeDirectDrain, supplyAirGap } from '../../src/topics/drain';
import { judgeManifold, MACHINE_CLASSES, MANUAL_SANITIZING, manifoldLimit, washLimit } from '../../src/topics/heat';
import { floorLegs, judgeGap } from '../../src/topics/room';
import { FOOD_CODE_RINSE_PRESSURE, judgeRinsePressure } from '../../src/topics/water';
import { fromSI, toSI } from '../../src/units';
import { valueOf } from '../support/valueOf';

const INCH = 0.0254;
const degF = (celsius: number | null) => fromSI(celsius ?? Number.NaN, 'F');
const psi = (value: number) => toSI(value, 'psi');

// source: FDA Food Code 4-501.110 as WAC 246-215-04545 and 16 Del. Admin. Code 4-501.110 · read · exact °F, whole °C as printed
describe('4-501.110 wash', () => {
  test.each([
    ['stationary-single', 'hot-water', 165, 74],
    ['stationary-dual', 'hot-water', 150, 66],
    ['conveyor-single-tank', 'hot-water', 160, 71],
    ['conveyor-multi-tank', 'hot-water', 150, 66],
    ['stationary-single', 'chemical', 120, 49],
    ['stationary-dual', 'chemical', 120, 49],
  ] as const)('%s, %s: %d °F (%d °C)', (machine, sanitizing, f, c) => {
    const { min, max } = washLimit(machine, sanitizing);
    expect(degF(min)).toBeCloseTo(f, 9);
    expect(Math.round(min ?? 0)).toBe(c);
    expect(max).toBeNull();
  });
});

// source: FDA Food Code 4-501.112 as WAC 246-215-04555, in force 2022-03-01 · read · exact °F, whole °C as printed
describe('4-501.112 final rinse at the manifold', () => {
  test.each(MACHINE_CLASSES)('%s: 165 °F at a single temperature, else 180 °F; at most 194 °F', (machine) => {
    const isSingle = machine === 'stationary-single';
    const { min, max } = manifoldLimit(machine);
    expect(degF(min)).toBeCloseTo(isSingle ? 165 : 180, 9);
    expect(Math.round(min ?? 0)).toBe(isSingle ? 74 : 82);
    expect(max).toBeCloseTo(90, 9);
  });
});

// regression: edges of 4-501.112 · computed · exact
describe('readings at the manifold', () => {
  test.each([
    ['stationary-single', 165, 'pass'],
    ['stationary-single', 164.9, 'low'],
    ['stationary-dual', 179, 'low'],
    ['stationary-dual', 180, 'pass'],
    ['stationary-dual', 194, 'pass'],
    ['stationary-dual', 195, 'high'],
    ['stationary-single', 195, 'high'],
  ] as const)('%s, %d °F: %s', (machine, f, expected) => expect(judgeManifold(machine, toSI(f, 'F'))).toBe(expected));

  test('no number is no pass', () => expect(judgeManifold('stationary-dual', Number.NaN)).not.toBe('pass'));

  // source: CDC Vessel Sanitation Program 2018, 13.16.2.2: temperatures of a plate are minima · read
  test('a plate that asks for more counts', () => {
    expect(judgeManifold('stationary-dual', toSI(181, 'F'), { min: toSI(185, 'F'), max: null })).toBe('low');
  });
});

// source: FDA Food Code 4-501.113 as WAC 246-215-04560 · read · exact psi; the printed 35 and 200 kPa are rounded
describe('4-501.113 flow pressure', () => {
  test('5 to 30 psi', () => {
    expect(fromSI(FOOD_CODE_RINSE_PRESSURE.min ?? 0, 'psi')).toBeCloseTo(5, 9);
    expect(fromSI(FOOD_CODE_RINSE_PRESSURE.max ?? 0, 'psi')).toBeCloseTo(30, 9);
    expect(Math.abs((FOOD_CODE_RINSE_PRESSURE.min ?? 0) - 35_000)).toBeLessThan(1000);
    expect(Math.abs((FOOD_CODE_RINSE_PRESSURE.max ?? 0) - 200_000)).toBeLessThan(7000);
  });

  // regression: edges of 4-501.113 inside a plate · computed · exact
  test.each([
    [20, { min: psi(15), max: psi(25) }, true, {}],
    [28, { min: psi(15), max: psi(25) }, false, { code: 'pressure-outside-plate', params: { side: 'high' } }],
    [4.9, null, false, { code: 'pressure-outside-rule', params: { side: 'low' } }],
    [5, null, true, {}],
    [30, null, true, {}],
    [30.1, null, false, { code: 'pressure-outside-rule', params: { side: 'high' } }],
    [fromSI(34_600, 'psi'), null, true, {}],
  ])('%d psi, plate %j: %s', (value, plate, pass, refusal) => {
    expect(judgeRinsePressure(psi(value), 'food-code', plate)).toMatchObject(pass ? { pass } : { pass, refusal });
  });
});

// source: FDA Food Code 4-501.111 as WAC 246-215-04550 · read · exact °F, whole °C as printed
test('4-501.111 by hand in hot water: 171 °F (77 °C)', () => {
  expect(degF(MANUAL_SANITIZING.min)).toBeCloseTo(171, 9);
  expect(Math.round(MANUAL_SANITIZING.min ?? 0)).toBe(77);
});

// source: FDA Food Code 5-202.13 as DC 25-B1405 · read · exact
describe('5-202.13 air gap of a supply', () => {
  test.each([
    [0.25, 1],
    [0.5, 1],
    [0.75, 1.5],
    [1, 2],
  ])('%d in: %d in', (opening, gap) => {
    expect(valueOf(supplyAirGap({ openingM: opening * INCH, rule: 'food-code' })) / INCH).toBeCloseTo(gap, 9);
  });
});

// source: FDA Food Code 5-402.11(C) as South Carolina 61-25 · read · exact
describe('5-402.11 direct connection', () => {
  const drain = { trapped: true, vented: true };
  test.each([
    ['60 in from it', { distanceM: 60 * INCH, ...drain }, true],
    ['61 in from it', { distanceM: 61 * INCH, ...drain }, false],
    ['no trap', { distanceM: 0.5, trapped: false, vented: true }, false],
    ['no vent', { distanceM: 0.5, trapped: true, vented: false }, false],
  ])('%s', (_name, one, pass) => expect(judgeDirectDrain(one).pass).toBe(pass));

  test('the rule prints 5 ft (1.5 m)', () => {
    expect(DIRECT_DRAIN_DISTANCE.max).toBeCloseTo(5 * 0.3048, 12);
    expect(judge(DIRECT_DRAIN_DISTANCE, 1.5)).toBe('pass');
  });
});

// source: FDA Food Code 4-402.12 as 7 Pa. Code 46.652(c) · read · exact
describe('4-402.12 clear height on the floor', () => {
  test.each([
    [6, 4],
    [6.1, 6],
    [30, 6],
  ])('floor %d in from the access: %d in', (farthest, height) => {
    expect(valueOf(floorLegs({ farthestM: farthest * INCH })) / INCH).toBeCloseTo(height, 9);
  });
});

// source: FDA Food Code 4-402.11 as WAC 246-215-04405 · read · exact
// source: the same as 7 Pa. Code joins it with “both” · read · our reading of “both”
describe('4-402.11 gap beside equipment: any of the ways, all of them', () => {
  test.each([
    ['1/32 in', { gapM: INCH / 32, cleanable: false, sealed: false }, true, false],
    ['1/32 in, sealed', { gapM: INCH / 32, cleanable: false, sealed: true }, true, true],
    ['0.04 in', { gapM: 0.04 * INCH, cleanable: false, sealed: false }, false, false],
    ['0.04 in, sealed', { gapM: 0.04 * INCH, cleanable: false, sealed: true }, true, false],
    ['a foot, cleanable', { gapM: 0.3048, cleanable: true, sealed: false }, true, true],
  ])('%s', (_name, gap, any, all) => expect([judgeGap(gap, 'any').pass, judgeGap(gap, 'all').pass]).toEqual([any, all]));
});

// source: FDA Food Code 4-204.117 as WAC 246-215-04258 · read · exact
describe('4-204.117 detergent and sanitiser by themselves, with a visual check or an alarm', () => {
  test.each([
    [true, true, false, true],
    [true, false, true, true],
    [true, false, false, false],
    [false, true, true, false],
  ])('automatic %s, seen %s, alarm %s: %s', (automatic, seen, alarm, pass) => {
    expect(judgeDosing({ automatic, seen, alarm }).pass).toBe(pass);
  });
});
