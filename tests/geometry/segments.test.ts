import { expect, test } from 'vitest';
import {
  centredRectangle,
  distanceBetweenConvex,
  intersectSegments,
  isCrossing,
  nearestBetweenSegments,
  type Point,
  rayToSegment,
} from '../../src/geometry';
import { MOTIONS } from '../support/motions';

const segment = ([ax, ay, bx, by]: readonly number[], move: (p: Point) => Point) => ({
  a: move({ x: ax as number, y: ay as number }),
  b: move({ x: bx as number, y: by as number }),
});

// Worked by hand.
test.each([
  { name: 'parallel, abreast', s: [0, 0, 10, 0], r: [0, 3, 10, 3], distance: 3 },
  { name: 'beyond the end', s: [0, 0, 10, 0], r: [13, 4, 20, 4], distance: 5 },
  { name: 'diagonals', s: [0, 0, 4, 4], r: [6, 0, 10, 4], distance: 4.242641 },
  { name: 'crossing', s: [0, 0, 10, 10], r: [0, 10, 10, 0], distance: 0 },
  { name: 'end on the other', s: [0, 0, 10, 0], r: [5, 0, 5, 8], distance: 0 },
])('distance of segments: $name', ({ s, r, distance }) => {
  for (const { move } of MOTIONS) {
    expect(nearestBetweenSegments(segment(s, move), segment(r, move)).distance).toBeCloseTo(distance, 5);
    expect(nearestBetweenSegments(segment(r, move), segment(s, move)).distance).toBeCloseTo(distance, 5);
  }
});

test('a proper crossing is not a touch', () => {
  const still = (p: Point) => p;
  expect(isCrossing(segment([0, 0, 10, 10], still), segment([0, 10, 10, 0], still))).toBe(true);
  expect(isCrossing(segment([0, 0, 10, 0], still), segment([5, 0, 5, 8], still))).toBe(false);
  expect(intersectSegments(segment([0, 0, 10, 10], still), segment([0, 10, 10, 0], still))).toEqual({ x: 5, y: 5 });
});

test('a 24 in square turned 45° before a wall at 40 in leaves 23.029437 in', () => {
  const wall = [
    { x: 40, y: -100 },
    { x: 40, y: 100 },
  ];
  expect(distanceBetweenConvex(centredRectangle({ x: 0, y: 0 }, 45, 24, 24), wall)).toBeCloseTo(23.029437, 6);
});

test('a ray meets a wall at its distance, and misses one behind it', () => {
  const wall = { a: { x: 5, y: -1 }, b: { x: 5, y: 1 } };
  expect(rayToSegment({ x: 0, y: 0 }, { x: 1, y: 0 }, wall)).toBe(5);
  expect(rayToSegment({ x: 0, y: 0 }, { x: -1, y: 0 }, wall)).toBeNull();
});
