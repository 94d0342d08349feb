import { describe, expect, test } from 'vitest';
import {
  area,
  bendsOf,
  intersectionArea,
  offsetPath,
  pathLength,
  pathLength3,
  pointAt,
  projectOnPath,
  slicePath,
  strip,
  turnsOf,
} from '../../src/geometry';
import { MOTIONS, points } from '../support/motions';

const CORNER = points([0, 0], [1000, 0], [1000, 800]);

describe('a path with a quarter turn to the right', () => {
  test('length, turn, points along it', () => {
    expect(pathLength(CORNER)).toBe(1800);
    expect(turnsOf(CORNER)).toEqual([90]);
    expect(pointAt(CORNER, 1200)).toEqual({ point: { x: 1000, y: 200 }, direction: { x: 0, y: 1 } });
    expect(pointAt(CORNER, -100).point).toEqual({ x: -100, y: 0 });
    expect(slicePath(CORNER, 900, 1100)).toEqual(points([900, 0], [1000, 0], [1000, 100]));
  });

  test('a point beside it', () => {
    expect(projectOnPath(CORNER, { x: 300, y: 40 })).toEqual({ s: 300, lateral: 40, distance: 40 });
    expect(projectOnPath(CORNER, { x: 1050, y: 500 })).toEqual({ s: 1500, lateral: -50, distance: 50 });
  });

  test('its strip: mitred pieces that share an edge and do not overlap', () => {
    for (const { move } of MOTIONS) {
      const { pieces, outline } = strip(CORNER.map(move), 200, 300);
      const [first, second] = pieces as [(typeof pieces)[0], (typeof pieces)[0]];
      // Legs of 1000 and 800, 500 wide; the turn takes from one side what it gives to the other, but for the difference of the widths.
      expect(area(first) + area(second)).toBeCloseTo(area(outline), 4);
      expect(intersectionArea(first, second)).toBeLessThan(1e-4);
    }
  });

  test('moved to the right it is shorter, to the left longer, by the mitre', () => {
    expect(offsetPath(CORNER, 100)).toEqual(points([0, 100], [900, 100], [900, 800]));
    expect(offsetPath(CORNER, -100)).toEqual(points([0, -100], [1100, -100], [1100, 800]));
  });
});

const UP = { x: 0, y: 0, z: 1 };

test.each([
  {
    name: 'straight up',
    path: [
      [0, 0, 0],
      [0, 0, 900],
    ],
    length: 900,
    bends: [],
  },
  {
    name: 'sideways from the collar',
    path: [
      [0, 0, 0],
      [900, 0, 0],
    ],
    length: 900,
    bends: [90],
  },
  {
    name: 'up, then over, then out',
    path: [
      [0, 0, 0],
      [0, 0, 900],
      [2000, 0, 900],
      [2000, 1500, 900],
    ],
    length: 4400,
    bends: [90, 90],
  },
  {
    name: 'a 45° offset in space',
    path: [
      [0, 0, 0],
      [0, 0, 900],
      [0, 600, 1500],
    ],
    length: 900 + Math.hypot(600, 600),
    bends: [45],
  },
  {
    name: 'a doubled point is no bend',
    path: [
      [0, 0, 0],
      [0, 0, 400],
      [0, 0, 400],
      [0, 0, 900],
    ],
    length: 900,
    bends: [],
  },
])('a run in space: $name', ({ path, length, bends }) => {
  const points3 = path.map(([x, y, z]) => ({ x: x as number, y: y as number, z: z as number }));
  expect(pathLength3(points3)).toBeCloseTo(length, 9);
  expect(bendsOf(points3, UP).map((bend) => Math.round(bend.angleDeg * 1e6) / 1e6)).toEqual(bends);
});

test('a path that turns straight back is cut square', () => {
  expect(offsetPath(points([0, 0], [100, 0], [0, 0]), 10)).toEqual(points([0, 10], [100, 10], [0, -10]));
});
