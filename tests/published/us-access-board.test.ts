import { describe, expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { STANDING_SLOPE } from '../../src/topics/cleanliness';
import {
  CLEAR_FLOOR,
  DOOR_HEIGHT,
  DOOR_WIDTH,
  judgeAccessibleRoute,
  judgeHalfTurn,
  judgeRouteExemption,
  TURNING_CIRCLE,
  TURNING_T,
  turningTArea,
} from '../../src/topics/room';
import { toSI } from '../../src/units';

const INCH = 0.0254;
const way = (...pieces: [width: number, length: number][]) =>
  pieces.map(([width, length]) => ({ widthM: width * INCH, lengthM: length * INCH }));

// source: US Access Board guide, ADA Standards 403.5.1 · read · exact
describe('403.5.1 clear width', () => {
  test.each([
    ['36 in', way([36, 100]), true],
    ['35.9 in', way([35.9, 100]), false],
    ['32 in for 24 in', way([36, 60], [32, 24], [36, 60]), true],
    ['32 in for 24.1 in', way([36, 60], [32, 24.1], [36, 60]), false],
    ['31.9 in for 2 in', way([36, 60], [31.9, 2], [36, 60]), false],
    ['two of 32 in, 47 in apart', way([32, 12], [40, 47], [32, 12]), false],
    ['two of 32 in, 48 in apart', way([32, 12], [40, 48], [32, 12]), true],
    ['the 48 in in two pieces', way([32, 12], [40, 20], [50, 28], [32, 12]), true],
    ['24 in of narrow in two pieces', way([32, 12], [33, 13]), false],
  ])('%s', (_name, stretches, pass) => expect(judgeAccessibleRoute(stretches).pass).toBe(pass));
});

// source: US Access Board guide, ADA Standards 403.5.2 · read · exact
describe('403.5.2 half turn round something narrower than 48 in', () => {
  test.each([
    [20, 42, 48, 42, true],
    [20, 41.9, 48, 42, false],
    [20, 36, 60, 36, true],
    [20, 36, 59.9, 36, false],
    [48, 36, 36, 36, true],
  ])('obstacle %d in: %d, %d, %d in', (...numbers) => {
    const pass = numbers.pop();
    const [obstacle = 0, before = 0, turn = 0, after = 0] = numbers.map((one) => Number(one) * INCH);
    expect(judgeHalfTurn(obstacle, before, turn, after).pass).toBe(pass);
  });
});

// source: US Access Board guide, ADA Standards 206.2.8, exception 1 · read · exact
describe('206.2.8 exemption of a work area', () => {
  test.each([
    [999, true, true],
    [1000, true, false],
    [999, false, false],
  ])('%d ft², fixed bounds %s: %s', (area, fixed, pass) => expect(judgeRouteExemption(toSI(area, 'ft2'), fixed).pass).toBe(pass));
});

// source: US Access Board guide, ADA Standards 304.3.1 · read · exact
test.each([
  [60, 'pass'],
  [59.9, 'low'],
] as const)('304.3.1 turning circle of %d in: %s', (inches, expected) => expect(judge(TURNING_CIRCLE, inches * INCH)).toBe(expected));

// regression: from US Access Board guide, ADA Standards 304.3.2: square of 60 in, arms and base 36 in (read) · computed · exact
test('304.3.2 the T takes 3,024 in²', () => expect(turningTArea() / INCH ** 2).toBeCloseTo(3024, 6));

// source: US Access Board guide, ADA Standards 304.3.2: square of 60 in, arms and base 36 in · read · exact
test('turning T', () => expect([TURNING_T.squareM / INCH, TURNING_T.armM / INCH].map((n) => Math.round(n * 1e9) / 1e9)).toEqual([60, 36]));

// source: US Access Board guide, ADA Standards 305.3: 30 × 48 in · read · exact
test('clear floor space', () =>
  expect([CLEAR_FLOOR.widthM / INCH, CLEAR_FLOOR.lengthM / INCH].map((n) => Math.round(n * 1e9) / 1e9)).toEqual([30, 48]));

// source: US Access Board guide, ADA Standards 404.2.3 · read · exact
test.each([
  [DOOR_WIDTH, 32, 'pass'],
  [DOOR_WIDTH, 31.9, 'low'],
  [DOOR_HEIGHT, 80, 'pass'],
  [DOOR_HEIGHT, 79.9, 'low'],
] as const)('404.2.3 $title', (limit, inches, expected) => expect(judge(limit, inches * INCH)).toBe(expected));

// source: US Access Board guide, ADA Standards 403.3 and 305.3: 1:48, so ¼ in/ft is just allowed · read · exact
test.each([
  [0.25 / 12, 'pass'],
  [1 / 47, 'high'],
] as const)('403.3 a slope of %d: %s', (slope, expected) => expect(judge(STANDING_SLOPE, slope)).toBe(expected));
