import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  angleOf,
  centredRectangle,
  cosSin,
  differenceDeg,
  directionOf,
  directionToLocal,
  directionToWorld,
  isConvex,
  leftOf,
  normalizeDeg,
  rectangle,
  rightOf,
  rotate,
  signedArea,
  simplifyCollinear,
  toLocal,
  toWorld,
} from '../../src/geometry';
import { MOTIONS, points } from '../support/motions';

// On the paper y runs down: a clockwise quarter turn takes right to down, down to left.
test.each([
  [0, { x: 1, y: 0 }],
  [90, { x: 0, y: 1 }],
  [180, { x: -1, y: 0 }],
  [270, { x: 0, y: -1 }],
  [-90, { x: 0, y: -1 }],
  [360, { x: 1, y: 0 }],
  [450, { x: 0, y: 1 }],
  [-720, { x: 1, y: 0 }],
])('%d° is exactly %o', (deg, d) => {
  expect(directionOf(deg)).toEqual(d);
  expect(rotate({ x: 1, y: 0 }, deg)).toEqual(d);
  expect(angleOf(d)).toBe(normalizeDeg(deg));
});

test.each([30, 45, 60, 137, -12.5])('the cosine and sine of %d° are those of its radians', (deg) => {
  const { cos, sin } = cosSin(deg);
  expect(cos).toBeCloseTo(Math.cos((deg * Math.PI) / 180), 14);
  expect(sin).toBeCloseTo(Math.sin((deg * Math.PI) / 180), 14);
});

test.each([
  [0, 90, 90],
  [90, 0, -90],
  [350, 10, 20],
  [10, 350, -20],
  [0, 180, 180],
  [180, 0, 180],
  [-45, 315, 0],
  [0, 720, 0],
])('from %d° to %d° is a turn of %d°', (from, to, turn) => expect(differenceDeg(from, to)).toBe(turn));

test('a person walking right has down to the right hand and up to the left', () => {
  expect(rightOf({ x: 1, y: 0 })).toEqual({ x: 0, y: 1 });
  expect(leftOf({ x: 1, y: 0 })).toEqual({ x: 0, y: -1 });
  expect(rightOf({ x: 0, y: 1 })).toEqual({ x: -1, y: 0 });
  expect(rightOf(leftOf({ x: 3, y: 4 }))).toEqual({ x: 3, y: 4 });
});

const coordinate = fc.double({ min: -1e5, max: 1e5, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });

describe('a frame', () => {
  test('there and back is the same place and direction', () => {
    fc.assert(
      fc.property(point, fc.double({ min: -720, max: 720, noNaN: true }), point, (origin, rotationDeg, p) => {
        const frame = { origin, rotationDeg };
        const [back, way] = [toLocal(frame, toWorld(frame, p)), directionToLocal(frame, directionToWorld(frame, p))];
        return [back, way].every((q) => Math.hypot(q.x - p.x, q.y - p.y) < 1e-7);
      }),
      { seed: 3 },
    );
  });

  test('turned by a quarter, its y axis points to the left', () => {
    const frame = { origin: { x: 100, y: 200 }, rotationDeg: 90 };
    expect(toWorld(frame, { x: 10, y: 0 })).toEqual({ x: 100, y: 210 });
    expect(toWorld(frame, { x: 0, y: 10 })).toEqual({ x: 90, y: 200 });
    expect(directionToWorld(frame, { x: 0, y: 1 })).toEqual({ x: -1, y: 0 });
  });

  test.each([0, 90, 180, 270, 33])('rectangles in it have positive area at %d°', (rotationDeg) => {
    expect(signedArea(rectangle({ origin: { x: 5, y: 6 }, rotationDeg }, 0, 0, 30, 20))).toBeCloseTo(600, 9);
    expect(signedArea(centredRectangle({ x: 5, y: 6 }, rotationDeg, 30, 20))).toBeCloseTo(600, 9);
  });

  test('four quarter turns bring a rectangle back to the last digit', () => {
    const corner = { x: 12.3, y: -45.6 };
    expect(rotate(rotate(rotate(rotate(corner, 90), 90), 90), 90)).toEqual(corner);
  });
});

describe.each(MOTIONS)('straight and doubled corners, $name', ({ move }) => {
  const doubled = points([0, 0], [50, 0], [100, 0], [100, 0], [100, 80], [40, 80], [0, 80], [0, 33]).map(move);

  test('are left out', () => expect(simplifyCollinear(doubled)).toHaveLength(4));
  test('do not make a rectangle concave', () => expect(isConvex(doubled)).toBe(true));
  test('do not hide a concave corner', () => expect(isConvex(points([0, 0], [50, 1], [100, 0], [100, 80], [0, 80]).map(move))).toBe(false));
});
