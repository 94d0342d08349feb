import Flatten from '@flatten-js/core';
import * as polyclip from 'polyclip-ts';
import { describe, expect, test } from 'vitest';
import {
  along,
  area,
  boundsOf,
  centredRectangle,
  directionTo,
  distanceBetweenConvex,
  edgesOf,
  intersectionArea,
  leftOf,
  type Polygon,
  penetration,
} from '../../src/geometry';
import { createRandom } from '../support/seeded';

const ring = (polygon: Polygon) => [polygon.map(({ x, y }) => [x, y] as [number, number])];

function pair(seed: number) {
  const random = createRandom(seed * 31 + 7);
  const body = () =>
    centredRectangle({ x: random() * 1500, y: random() * 1500 }, random() * 360, 200 + random() * 900, 200 + random() * 900);
  return [body(), body()] as const;
}

describe('against independent libraries, seeded pairs', () => {
  test('overlap area: polyclip-ts', () => {
    for (let seed = 0; seed < 80; seed++) {
      const [a, b] = pair(seed);
      const theirs = polyclip
        .intersection(ring(a), ring(b))
        .flat()
        .reduce((sum, r) => sum + area(r.map(([x, y]) => ({ x, y }))), 0);
      expect(intersectionArea(a, b)).toBeCloseTo(theirs, 2);
    }
  });

  test('distance: flatten-js', () => {
    for (let seed = 0; seed < 80; seed++) {
      const [a, b] = pair(seed);
      const [p, q] = [a, b].map((body) => new Flatten.Polygon(body.map(({ x, y }) => new Flatten.Point(x, y)))) as [
        Flatten.Polygon,
        Flatten.Polygon,
      ];
      const theirs = intersectionArea(a, b) > 0 ? 0 : p.distanceTo(q)[0];
      expect(distanceBetweenConvex(a, b)).toBeCloseTo(theirs, 6);
    }
  });

  test('a push as long as the penetration parts the two square to one edge of theirs, and a shorter one square to none', () => {
    for (let seed = 0; seed < 80; seed++) {
      const [a, b] = pair(seed);
      const depth = penetration(a, b);
      if (depth === 0) continue;
      const normals = [a, b].flatMap((polygon) => edgesOf(polygon).map((edge) => leftOf(directionTo(edge.a, edge.b))));
      const left = (by: number) =>
        [-by, by].flatMap((way) =>
          normals.map((normal) =>
            penetration(
              a,
              b.map((p) => along(p, normal, way)),
            ),
          ),
        );
      expect(Math.min(...left(depth + 1e-6))).toBe(0);
      expect(Math.min(...left(depth - 1e-3))).toBeGreaterThan(0);
    }
  });
});

describe('nearly touching bodies', () => {
  test.each([0, 1e-12, -1e-12, 1e-9, -1e-9, 1e-6, -1e-6])('gap %d', (gap) => {
    for (const twist of [0, 1e-10, -1e-10]) {
      for (const origin of [0, 1e6]) {
        const a = centredRectangle({ x: origin, y: origin }, 0, 600, 700);
        const b = centredRectangle({ x: origin + 600 + gap, y: origin }, (twist * 180) / Math.PI, 600, 700);
        expect(intersectionArea(a, b)).toBeLessThan(1);
        expect(distanceBetweenConvex(a, b)).toBeLessThan(1e-5);
        expect(penetration(a, b)).toBeLessThan(1e-5);
      }
    }
  });
});

const block = (x0: number, x1: number): Polygon => [
  { x: x0, y: 0 },
  { x: x1, y: 0 },
  { x: x1, y: 100 },
  { x: x0, y: 100 },
];

test.each([
  { name: '30 in each other', a: block(0, 100), b: block(70, 170), depth: 30 },
  { name: 'a corner drawn twice', a: [{ x: 0, y: 0 }, ...block(0, 100)], b: block(70, 170), depth: 30 },
  { name: 'a corner of the other drawn twice', a: block(0, 100), b: [{ x: 70, y: 0 }, ...block(70, 170)], depth: 30 },
  { name: 'touching', a: block(0, 100), b: block(100, 200), depth: 0 },
  { name: 'apart', a: block(0, 100), b: block(120, 200), depth: 0 },
])('how deep two blocks overlap: $name', ({ a, b, depth }) => {
  expect(penetration(a, b)).toBe(depth);
  expect(penetration(b, a)).toBe(depth);
});

test('bounds of nothing are refused', () => {
  expect(() => boundsOf([])).toThrow(RangeError);
});
