import Centroid from 'jsts/org/locationtech/jts/algorithm/Centroid.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import { describe, expect, test } from 'vitest';
import {
  area,
  centredRectangle,
  centroid,
  clipConvex,
  containsPoint,
  distanceBetweenConvex,
  distanceBetweenPointAndConvex,
  intersectionArea,
  isConvex,
  isSimple,
  nearestBetweenConvex,
  offsetConvex,
  type Point,
  type Polygon,
  penetration,
  signedDistance,
} from '../../src/geometry';
import { createRandom } from '../support/seeded';

// The oracle is jsts, a port of the JTS Topology Suite: overlay, distance and validity.
const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
const toJts = (polygon: Polygon) => factory.createPolygon([...polygon, ...polygon.slice(0, 1)].map(coordinate));

/** Convex polygons of 3 to 9 corners: points of an ellipse in order. */
function createConvex(random: () => number, reach: number): Polygon {
  const angles = Array.from({ length: 3 + Math.floor(random() * 7) }, () => random() * 2 * Math.PI).sort((a, b) => a - b);
  const [x, y, wide, high] = [random() * reach, random() * reach, 50 + random() * 500, 50 + random() * 500];
  const polygon = angles.map((angle) => ({ x: x + wide * Math.cos(angle), y: y + high * Math.sin(angle) }));
  return random() < 0.5 ? polygon : polygon.toReversed();
}

describe('convex polygons at random', () => {
  const random = createRandom(2027);
  const pairs = Array.from({ length: 400 }, () => [createConvex(random, 1200), createConvex(random, 1200)] as const);

  test('overlap area', () => {
    for (const [a, b] of pairs) {
      const theirs = OverlayOp.intersection(toJts(a), toJts(b)).getArea();
      expect(Math.abs(intersectionArea(a, b) - theirs)).toBeLessThan(1e-4);
      expect(Math.abs(intersectionArea(b, a) - theirs)).toBeLessThan(1e-4);
      expect(isConvex(clipConvex(a, b)) || theirs < 1e-4).toBe(true);
    }
  });

  test('distance, both ways, between points that lie on the shapes', () => {
    for (const [a, b] of pairs) {
      const theirs = DistanceOp.distance(toJts(a), toJts(b));
      expect(distanceBetweenConvex(a, b)).toBeCloseTo(theirs, 7);
      const nearest = nearestBetweenConvex(b, a);
      expect(nearest.distance).toBeCloseTo(theirs, 7);
      expect(Math.hypot(nearest.a.x - nearest.b.x, nearest.a.y - nearest.b.y)).toBeCloseTo(theirs, 7);
      expect(containsPoint(b, nearest.a) && containsPoint(a, nearest.b)).toBe(true);
    }
  });

  test('they overlap exactly when there is something to push apart', () => {
    const areaOf = ([a, b]: (typeof pairs)[number]) => OverlayOp.intersection(toJts(a), toJts(b)).getArea();
    const overlapping = pairs.filter((pair) => areaOf(pair) > 1e-3);
    const apart = pairs.filter(([a, b]) => DistanceOp.distance(toJts(a), toJts(b)) > 1e-6);
    for (const [a, b] of overlapping) expect(penetration(a, b)).toBeGreaterThan(0);
    for (const [a, b] of apart) expect(penetration(a, b)).toBe(0);
    expect(Math.min(overlapping.length, apart.length)).toBeGreaterThan(100);
  });

  test('area, centroid, and distance of points and segments', () => {
    for (const [a, b] of pairs) {
      expect(area(a)).toBeCloseTo(toJts(a).getArea(), 5);
      const { x, y } = Centroid.getCentroid(toJts(a));
      expect(Math.hypot(centroid(a).x - x, centroid(a).y - y)).toBeLessThan(1e-6);
      const [p, q] = b as [Point, Point];
      const point = DistanceOp.distance(toJts(a), factory.createPoint(coordinate(p)));
      expect(distanceBetweenPointAndConvex(p, a)).toBeCloseTo(point, 7);
      expect(Math.max(0, signedDistance(a, p))).toBeCloseTo(point, 7);
      const segment = DistanceOp.distance(toJts(a), factory.createLineString([p, q].map(coordinate)));
      expect(distanceBetweenConvex(a, [p, q])).toBeCloseTo(segment, 7);
      expect(distanceBetweenConvex([q, p], a)).toBeCloseTo(segment, 7);
    }
  });

  test('two segments', () => {
    for (const [[p, q], [r, s]] of pairs as unknown as [[Point, Point], [Point, Point]][]) {
      const theirs = DistanceOp.distance(
        factory.createLineString([p, q].map(coordinate)),
        factory.createLineString([r, s].map(coordinate)),
      );
      expect(distanceBetweenConvex([p, q], [r, s])).toBeCloseTo(theirs, 7);
    }
  });

  test('shrunk by 8, every corner is 8 inside the old outline; grown back, it is the old one where no edge was lost', () => {
    let kept = 0;
    for (const [a] of pairs) {
      const inner = offsetConvex(a, -8);
      for (const p of inner) expect(signedDistance(a, p)).toBeCloseTo(-8, 6);
      if (inner.length !== a.length) continue;
      kept++;
      const grown = offsetConvex(inner, 8);
      expect(area(grown)).toBeCloseTo(area(a), 4);
      expect(intersectionArea(grown, a)).toBeCloseTo(area(a), 3);
    }
    expect(kept).toBeGreaterThan(100);
  });
});

describe('bodies that nearly touch: shared edges, gaps down to 1e-12, twists of 1e-10 rad, near and far from the origin', () => {
  const random = createRandom(77);
  const nudges = [0, 1e-12, -1e-12, 1e-9, -1e-9, 1e-7, -1e-7, 1e-5, -1e-5];
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const pairs = Array.from({ length: 2000 }, () => {
    const origin = pick([0, 1e6]);
    const [alongX, alongY] = [pick([0, 300, 600]), pick([0, 350, 700])];
    const twistDeg = (pick([0, 1e-10, -1e-10]) * 180) / Math.PI;
    const at = { x: origin + alongX + pick(nudges), y: origin + alongY + pick(nudges) };
    const shared = Math.max(0, 600 - alongX) * Math.max(0, 700 - alongY);
    return { a: centredRectangle({ x: origin, y: origin }, 0, 600, 700), b: centredRectangle(at, twistDeg, 600, 700), shared };
  });

  test('overlap area within 0.05 mm², and no part is ever refused', () => {
    for (const { a, b, shared } of pairs) expect(Math.abs(intersectionArea(a, b) - shared)).toBeLessThan(0.05);
  });

  test('distance and depth within 1e-4 mm', () => {
    for (const { a, b } of pairs) expect(distanceBetweenConvex(a, b)).toBeLessThan(1e-4);
    for (const { a, b } of pairs.filter(({ shared }) => shared === 0)) expect(penetration(a, b)).toBeLessThan(1e-4);
  });

  test('distance agrees with the oracle within the rounding of numbers so large', () => {
    for (const { a, b } of pairs.slice(0, 400))
      expect(Math.abs(distanceBetweenConvex(a, b) - DistanceOp.distance(toJts(a), toJts(b)))).toBeLessThan(1e-9);
  });
});

test('a room is simple exactly when the oracle calls its polygon valid', () => {
  const random = createRandom(5);
  let valid = 0;
  for (let i = 0; i < 600; i++) {
    // Corners on a coarse raster: they often touch, fold back and repeat.
    const polygon = Array.from({ length: 3 + Math.floor(random() * 4) }, () => ({
      x: Math.floor(random() * 6),
      y: Math.floor(random() * 6),
    }));
    const hasRepeat = polygon.some((p, k) => polygon.findIndex((q) => q.x === p.x && q.y === p.y) !== k);
    const isValid = !hasRepeat && new IsValidOp(toJts(polygon)).isValid();
    if (isValid) valid++;
    expect([polygon, isSimple(polygon)]).toEqual([polygon, isValid]);
  }
  expect(valid).toBeGreaterThan(100);
});
