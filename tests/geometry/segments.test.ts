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

// Worked by hand. Segments that reach each other with an end meet there.
test.each([
  { name: 'the end of the first', s: [0, 0, 10, 0], r: [10, -5, 10, 5], at: { x: 10, y: 0 } },
  { name: 'the start of the first', s: [0, 0, 10, 0], r: [0, -5, 0, 5], at: { x: 0, y: 0 } },
  { name: 'the end of the second', s: [0, 0, 10, 0], r: [4, -5, 4, 0], at: { x: 4, y: 0 } },
  { name: 'the start of the second', s: [0, 0, 10, 0], r: [4, 0, 4, 5], at: { x: 4, y: 0 } },
  { name: 'nowhere: past the end of the first', s: [0, 0, 10, 0], r: [11, -5, 11, 5], at: null },
  { name: 'nowhere: before the start of the first', s: [0, 0, 10, 0], r: [-1, -5, -1, 5], at: null },
  { name: 'nowhere: short of the first', s: [0, 0, 10, 0], r: [4, -5, 4, -1], at: null },
  { name: 'nowhere: beyond the first', s: [0, 0, 10, 0], r: [4, 1, 4, 5], at: null },
  { name: 'nowhere: along each other', s: [0, 0, 10, 0], r: [5, 0, 15, 0], at: null },
])('segments meet at $name', ({ s, r, at }) => {
  const still = (p: Point) => p;
  expect(intersectSegments(segment(s, still), segment(r, still))).toEqual(at);
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

// A wall from (5, −1) to (5, 1) and a ray from a place along the paper's axes.
test.each([
  { name: 'its middle', origin: [0, 0], d: [1, 0], away: 5 },
  { name: 'its end', origin: [0, 1], d: [1, 0], away: 5 },
  { name: 'its start', origin: [0, -1], d: [1, 0], away: 5 },
  { name: 'from where it begins', origin: [5, 0], d: [1, 0], away: 0 },
  { name: 'nothing: past its end', origin: [0, 1.5], d: [1, 0], away: null },
  { name: 'nothing: past its start', origin: [0, -1.5], d: [1, 0], away: null },
  { name: 'nothing: beside it', origin: [0, 0], d: [0, 1], away: null },
  { name: 'nothing: along it', origin: [5, -9], d: [0, 1], away: null },
] as const)('a ray meets $name', ({ origin: [x, y], d: [dx, dy], away }) => {
  const wall = { a: { x: 5, y: -1 }, b: { x: 5, y: 1 } };
  expect(rayToSegment({ x, y }, { x: dx, y: dy }, wall)).toBe(away);
});

test('of pairs that are equally near the first is given', () => {
  const abreast = { a: { x: 0, y: 3 }, b: { x: 10, y: 3 } };
  expect(nearestBetweenSegments({ a: { x: 0, y: 0 }, b: { x: 10, y: 0 } }, abreast)).toEqual({
    a: { x: 0, y: 0 },
    b: { x: 0, y: 3 },
    distance: 3,
  });
});
