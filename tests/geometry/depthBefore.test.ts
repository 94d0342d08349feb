import { expect, test } from 'vitest';
import { add, depthBefore, distanceBetweenConvex, floorBefore, nearestBetweenConvex, type Polygon } from '../../src/geometry';
import { MOTIONS, points } from '../support/motions';

/** A face from (0, 0) to (100, 0) that looks down the paper; nothing is looked for at 900 or farther. */
const FACE = points([0, 0], [100, 0]);
const box = (x0: number, y0: number, x1: number, y1: number) => points([x0, y0], [x1, y0], [x1, y1], [x0, y1]);

interface Row {
  name: string;
  piece: Polygon;
  tolerance?: number;
  depth: number;
}

const ROWS: Row[] = [
  { name: 'in the strip', piece: box(20, 40, 80, 60), depth: 40 },
  { name: 'wider than the strip', piece: box(-50, 40, 150, 60), depth: 40 },
  { name: 'against the face', piece: box(20, 0, 80, 60), depth: 0 },
  { name: 'from behind the face to before it', piece: box(20, -30, 80, 60), depth: 0 },
  { name: 'behind the face', piece: box(20, -60, 80, -1), depth: 900 },
  { name: 'up to the face from behind', piece: box(20, -60, 80, 0), depth: 900 },
  { name: 'beside the strip at its left', piece: box(-50, 40, 0, 60), depth: 900 },
  { name: 'beside it at its right', piece: box(100, 40, 150, 60), depth: 900 },
  { name: '1 in it at its left', piece: box(-50, 40, 1, 60), depth: 40 },
  { name: '1 in it at its right', piece: box(99, 40, 150, 60), depth: 40 },
  { name: '5 in it at its left, where 5 is beside', piece: box(-50, 40, 5, 60), tolerance: 5, depth: 900 },
  { name: '5 in it at its right, where 5 is beside', piece: box(95, 40, 150, 60), tolerance: 5, depth: 900 },
  { name: '6 in it at its left, where 5 is beside', piece: box(-50, 40, 6, 60), tolerance: 5, depth: 40 },
  { name: '6 in it at its right, where 5 is beside', piece: box(94, 40, 150, 60), tolerance: 5, depth: 40 },
  { name: 'before the face by 5, where 5 is beside', piece: box(20, -30, 80, 5), tolerance: 5, depth: 900 },
  { name: 'farther than is looked', piece: box(20, 950, 80, 990), depth: 900 },
  { name: 'just as far', piece: box(20, 900, 80, 990), depth: 900 },
  // The hypotenuse falls from (−40, 80) to (60, −20) by 45°: at the left edge of the strip it is at 40; the corner at (60, 80) is farther.
  { name: 'a triangle, its near corner behind the face', piece: points([60, -20], [60, 80], [-40, 80]), depth: 0 },
  // Its near corner (−20, 10) is beside the strip; the edge from there to (40, 70) enters it at (0, 30).
  { name: 'a triangle, its near corner beside the strip', piece: points([-20, 10], [40, 70], [-20, 70]), depth: 30 },
  { name: 'the same, 5 of the strip beside', piece: points([-20, 10], [40, 70], [-20, 70]), tolerance: 5, depth: 35 },
  { name: 'the same at the other end', piece: points([120, 10], [60, 70], [120, 70]), depth: 30 },
  { name: 'the same at the other end, 5 of the strip beside', piece: points([120, 10], [60, 70], [120, 70]), tolerance: 5, depth: 35 },
  { name: 'a corner that cuts across beside the strip’s end', piece: points([101, 10], [150, 59], [101, 59]), depth: 900 },
];

/** About the origin and away from it: quarter turns and a mirror leave the depths exact. */
const PLACES = MOTIONS.filter(({ name }) => ['turned 0°', 'turned 90°', 'turned 180°', 'mirrored'].includes(name)).flatMap((motion) => [
  motion,
  { name: `${motion.name} and moved`, move: (p: Point2) => add(motion.move(p), { x: 3000, y: -2000 }) },
]);

test.each(ROWS)('how far before a face: $name', ({ piece, tolerance = 0, depth }) => {
  for (const { name, move } of PLACES) {
    const [a, b, o, down] = [...FACE, { x: 0, y: 0 }, { x: 0, y: 1 }].map(move) as [Point2, Point2, Point2, Point2];
    const normal = { x: down.x - o.x, y: down.y - o.y };
    for (const outline of [piece.map(move), piece.map(move).toReversed()]) {
      const found = depthBefore(outline, { a, b }, normal, 900, tolerance);
      expect([name, Math.round(found * 1e6) / 1e6 + 0]).toEqual([name, depth]);
    }
  }
});

type Point2 = Polygon[number];

test('of two bodies that touch along an edge the shared point is a corner that lies on the other', () => {
  const wide = box(0, 0, 100, 100);
  const beside = points([100, 80], [100, 20], [200, 20], [200, 80]);
  const corner = { x: 100, y: 80 };
  expect(nearestBetweenConvex(wide, beside)).toEqual({ a: corner, b: corner, distance: 0 });
  expect(nearestBetweenConvex(beside, wide)).toEqual({ a: corner, b: corner, distance: 0 });
});

test('a shape without points is infinitely far', () => {
  const nowhere = { x: 0, y: 0 };
  expect(nearestBetweenConvex([], box(5, 5, 9, 9))).toEqual({ a: nowhere, b: nowhere, distance: Number.POSITIVE_INFINITY });
});

test('of several corners that are equally near the first is taken', () => {
  const found = nearestBetweenConvex(box(0, 0, 100, 100), box(130, 0, 200, 100));
  expect(found).toEqual({ a: { x: 100, y: 0 }, b: { x: 130, y: 0 }, distance: 30 });
});

test('the floor before a face', () => {
  const [a, b] = FACE as [Point2, Point2];
  expect(floorBefore({ a, b }, { x: 0, y: 1 }, 70)).toEqual(points([0, 0], [100, 0], [100, 70], [0, 70]));
});

test.each([
  { name: 'a place in a body', one: points([50, 50]), other: box(0, 0, 100, 100), distance: 0 },
  { name: 'a place on its edge', one: points([0, 50]), other: box(0, 0, 100, 100), distance: 0 },
  { name: 'a place beside it', one: points([-7, 50]), other: box(0, 0, 100, 100), distance: 7 },
  { name: 'two places', one: points([0, 0]), other: points([3, 4]), distance: 5 },
  { name: 'one place twice', one: points([3, 4]), other: points([3, 4]), distance: 0 },
  { name: 'a place on a line', one: points([5, 0]), other: points([0, 0], [10, 0]), distance: 0 },
  { name: 'a place behind the end of a line', one: points([13, 4]), other: points([0, 0], [10, 0]), distance: 5 },
  { name: 'a line wholly in a body', one: points([20, 50], [80, 50]), other: box(0, 0, 100, 100), distance: 0 },
  { name: 'a line right through a body', one: points([-20, 50], [180, 50]), other: box(0, 0, 100, 100), distance: 0 },
  { name: 'a body in a body', one: box(20, 20, 30, 30), other: box(0, 0, 100, 100), distance: 0 },
  { name: 'a cross of two bodies', one: box(40, -50, 60, 150), other: box(0, 0, 100, 100), distance: 0 },
  { name: 'two lines in line', one: points([0, 0], [10, 0]), other: points([14, 0], [20, 0]), distance: 4 },
  { name: 'two lines that lie on each other', one: points([0, 0], [10, 0]), other: points([5, 0], [20, 0]), distance: 0 },
])('the distance of $name', ({ one, other, distance }) => {
  for (const [a, b] of [
    [one, other],
    [other, one],
  ] as const) {
    expect(distanceBetweenConvex(a, b)).toBe(distance);
    const nearest = nearestBetweenConvex(a, b);
    expect(Math.hypot(nearest.a.x - nearest.b.x, nearest.a.y - nearest.b.y)).toBe(distance);
  }
});
