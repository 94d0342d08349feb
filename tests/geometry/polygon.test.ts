import { describe, expect, test } from 'vitest';
import { area, centroid, containsPoint, findSelfCrossing, isConvex, offsetConvex, orient, perimeter, signedArea } from '../../src/geometry';
import { MOTIONS, points } from '../support/motions';

// Worked by hand, inches. Exact arithmetic of the shoelace formula.
const SHAPES = [
  { name: 'rectangle', polygon: points([0, 0], [144, 0], [144, 96], [0, 96]), area: 13_824, centre: [72, 48], perimeter: 480 },
  { name: 'triangle', polygon: points([0, 0], [6, 0], [0, 9]), area: 27, centre: [2, 3], perimeter: 25.816654 },
  {
    name: 'L room',
    polygon: points([0, 0], [144, 0], [144, 60], [60, 60], [60, 120], [0, 120]),
    area: 12_240,
    centre: [1014 / 17, 810 / 17],
    perimeter: 528,
  },
  {
    name: 'U of tables',
    polygon: points([0, 0], [120, 0], [120, 90], [90, 90], [90, 30], [30, 30], [30, 90], [0, 90]),
    area: 7200,
    centre: [60, 37.5],
    perimeter: 540,
  },
  {
    name: 'turning T (ADA 304.3.2)',
    polygon: points([0, 24], [12, 24], [12, 0], [48, 0], [48, 24], [60, 24], [60, 60], [0, 60]),
    area: 3024,
    centre: [30, 234 / 7],
    perimeter: 240,
  },
] as const;

describe.each(SHAPES)('$name', (shape) => {
  test.each(MOTIONS)('$name', ({ move, isMirror }) => {
    const moved = shape.polygon.map(move);
    const centre = move({ x: shape.centre[0], y: shape.centre[1] });
    expect(signedArea(moved)).toBeCloseTo(isMirror ? -shape.area : shape.area, 3);
    expect(signedArea(moved.toReversed())).toBeCloseTo(isMirror ? shape.area : -shape.area, 3);
    expect(centroid(moved).x).toBeCloseTo(centre.x, 5);
    expect(centroid(moved.toReversed()).y).toBeCloseTo(centre.y, 5);
    expect(perimeter(moved)).toBeCloseTo(shape.perimeter, 4);
    expect(signedArea(orient(moved))).toBeGreaterThan(0);
  });
});

test.each([
  { name: 'a clockwise one of half a mm² stays', polygon: points([0, 0], [1, 0], [0, 1]), oriented: points([0, 0], [1, 0], [0, 1]) },
  { name: 'its reverse is reversed', polygon: points([0, 1], [1, 0], [0, 0]), oriented: points([0, 0], [1, 0], [0, 1]) },
  { name: 'one without area stays', polygon: points([0, 0], [9, 0], [4, 0]), oriented: points([0, 0], [9, 0], [4, 0]) },
])('which way outlines are walked: $name', ({ polygon, oriented }) => expect(orient(polygon)).toEqual(oriented));

// Between legs of 10 and 1 the corner at (10, 0) turns by `off`; all others turn the other way.
test.each([
  { name: 'as far as it can be measured', off: 1e-6, is: true },
  { name: 'ten times as far', off: 1e-5, is: false },
])('a corner that turns the other way $name', ({ off, is }) => {
  expect(isConvex(points([0, 0], [10, 0], [11, off], [5, -10]))).toBe(is);
});

test.each([
  { name: 'the first edge', polygon: points([0, 0], [0, 0], [10, 0], [0, 10]), edges: [0, 0] },
  { name: 'the last edge', polygon: points([0, 0], [10, 0], [0, 10], [0, 0]), edges: [3, 3] },
])('an edge without length: $name', ({ polygon, edges }) => expect(findSelfCrossing(polygon)?.edges).toEqual(edges));

test('a regular hexagon of side 10', () => {
  const hexagon = Array.from({ length: 6 }, (_, i) => ({ x: 10 * Math.cos((i * Math.PI) / 3), y: 10 * Math.sin((i * Math.PI) / 3) }));
  expect(area(hexagon)).toBeCloseTo(259.807621, 6);
  expect(isConvex(hexagon)).toBe(true);
});

test('degenerate rings have no area, and a closing duplicate changes nothing', () => {
  expect(area(points([0, 0], [5, 0], [10, 0]))).toBe(0);
  expect(area(points([0, 0], [5, 5]))).toBe(0);
  expect(area(points([0, 0], [10, 0], [10, 10], [0, 10], [0, 0]))).toBe(100);
});

test.each([
  { name: 'inside', p: [30, 30], is: true },
  { name: 'on an edge', p: [144, 30], is: true },
  { name: 'on a corner', p: [60, 60], is: true },
  { name: 'in the notch', p: [100, 90], is: false },
  { name: 'outside', p: [-1, 30], is: false },
] as const)('a point $name of the L room', ({ p: [x, y], is }) => {
  const room = SHAPES[2].polygon;
  for (const { move } of MOTIONS) expect(containsPoint(room.map(move), move({ x, y }))).toBe(is);
});

test.each([
  { name: 'a simple room', polygon: points([0, 0], [10, 0], [10, 10], [0, 10]), edges: null },
  { name: 'a bow tie', polygon: points([0, 0], [10, 10], [10, 0], [0, 10]), edges: [0, 2] },
  { name: 'a corner that touches another wall', polygon: points([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]), edges: [0, 2] },
  { name: 'a wall that folds back', polygon: points([0, 0], [10, 0], [4, 0], [4, 8]), edges: [0, 1] },
  { name: 'a wall of no length', polygon: points([0, 0], [10, 0], [10, 0], [0, 10]), edges: [1, 1] },
  { name: 'a collinear corner', polygon: points([0, 0], [5, 0], [10, 0], [10, 10], [0, 10]), edges: null },
])('self-crossing: $name', ({ polygon, edges }) => {
  expect(findSelfCrossing(polygon)?.edges ?? null).toEqual(edges);
});

test('offsets of a rectangle with sharp corners (formula A + P·d + 4d²)', () => {
  const room = SHAPES[0].polygon;
  expect(area(offsetConvex(room, 12))).toBeCloseTo(13_824 + 480 * 12 + 4 * 144, 6);
  expect(area(offsetConvex(room.toReversed(), -12))).toBeCloseTo(120 * 72, 6);
  expect(offsetConvex(room, -48.001)).toEqual([]);
});
