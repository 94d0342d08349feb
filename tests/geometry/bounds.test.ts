import { expect, test } from 'vitest';
import { type Bounds, boundsOf, growBounds, isNearBounds, squareBetweenBounds, squareToBounds, unionBounds } from '../../src/geometry';
import { points } from '../support/motions';

const box = (minX: number, minY: number, maxX: number, maxY: number): Bounds => ({ minX, minY, maxX, maxY });
const UNIT = box(0, 0, 10, 20);

test('the box around points, around two boxes, and grown', () => {
  expect(boundsOf(points([3, 7], [-2, 5], [4, -1]))).toEqual(box(-2, -1, 4, 7));
  expect(boundsOf(points([3, 7]))).toEqual(box(3, 7, 3, 7));
  expect(() => boundsOf([])).toThrow(RangeError);
  expect(unionBounds(box(0, 5, 10, 20), box(-1, 6, 9, 30))).toEqual(box(-1, 5, 10, 30));
  expect(growBounds(UNIT, 3)).toEqual(box(-3, -3, 13, 23));
});

test.each([
  { name: 'in it', p: [5, 5], square: 0 },
  { name: 'on its edge', p: [10, 5], square: 0 },
  { name: 'to the left', p: [-3, 5], square: 9 },
  { name: 'to the right', p: [13, 5], square: 9 },
  { name: 'above', p: [5, -4], square: 16 },
  { name: 'below', p: [5, 24], square: 16 },
  { name: 'off a corner', p: [13, 24], square: 25 },
  { name: 'off the corner across', p: [-3, -4], square: 25 },
] as const)('from a place $name to a box', ({ p: [x, y], square }) => expect(squareToBounds(UNIT, { x, y })).toBe(square));

// Beside the box from (0, 0) to (10, 20).
test.each([
  { name: 'over it', other: box(5, 5, 15, 15), square: 0, isTouching: true },
  { name: 'in it', other: box(4, 4, 6, 6), square: 0, isTouching: true },
  { name: 'at its right edge', other: box(10, 0, 12, 5), square: 0, isTouching: true },
  { name: 'at its lower edge', other: box(0, 20, 12, 25), square: 0, isTouching: true },
  { name: '3 to the right', other: box(13, 0, 15, 5), square: 9, isTouching: false },
  { name: '3 to the left', other: box(-5, 0, -3, 5), square: 9, isTouching: false },
  { name: '4 above', other: box(0, -9, 5, -4), square: 16, isTouching: false },
  { name: '4 below', other: box(0, 24, 5, 29), square: 16, isTouching: false },
  { name: 'off a corner', other: box(13, 24, 15, 29), square: 25, isTouching: false },
])('two boxes: $name', ({ other, square, isTouching }) => {
  for (const [a, b] of [
    [UNIT, other],
    [other, UNIT],
  ] as const) {
    expect(squareBetweenBounds(a, b)).toBe(square);
    expect(isNearBounds(a, b)).toBe(isTouching);
    // Across and down for themselves: 4 reaches 3 and 4, 3.9 does not reach 4.
    expect(isNearBounds(a, b, 4)).toBe(true);
    expect(isNearBounds(a, b, 3.9)).toBe(square < 16);
    expect(isNearBounds(a, b, 2.9)).toBe(square === 0);
  }
});
