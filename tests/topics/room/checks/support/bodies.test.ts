import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { describe, expect, test } from 'vitest';
import { centredRectangle, clipConvex, type Point, type Polygon } from '../../../../../src/geometry';
import { createSolid, type Solid } from '../../../../../src/scene';
import { findClash, listExits } from '../../../../../src/topics/room/checks/support/bodies';
import { createRandom } from '../../../../support/seeded';

// The oracle is jsts, a port of the JTS Topology Suite: overlay and distance.
const factory = new GeometryFactory();
const toJts = (polygon: Polygon) => factory.createPolygon([...polygon, ...polygon.slice(0, 1)].map(({ x, y }) => new Coordinate(x, y)));
const overlapArea = (a: Polygon, b: Polygon): number => OverlayOp.intersection(toJts(a), toJts(b)).getArea();

const body = (piece: Polygon, zFrom = 0, zTo = 1000, kind: Solid['kind'] = 'thing'): Solid =>
  createSolid({ owner: '', kind, pieces: [piece], zFrom, zTo });
const square = (x: number, y: number, size: number): Polygon => centredRectangle({ x, y }, 0, size, size);
const moved = (piece: Polygon, by: Point): Polygon => piece.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));

describe('rectangles at random, at any angle', () => {
  const random = createRandom(71);
  const rectangle = () =>
    centredRectangle({ x: random() * 900, y: random() * 900 }, random() * 360, 80 + random() * 700, 80 + random() * 700);
  const pairs = Array.from({ length: 90 }, () => [rectangle(), rectangle()] as const);

  const clashOf = ([a, b]: (typeof pairs)[number]) => findClash(body(a), body(b));
  const clashes = pairs.flatMap((pair) => clashOf(pair) ?? []);

  test('a clash is found where the oracle finds more than a sliver of shared floor, and nowhere else', () => {
    // 1 mm deep at least along one edge of 80 mm, or across a corner.
    const deep = pairs.filter(([a, b]) => overlapArea(a, b) > 1200);
    const apart = pairs.filter(([a, b]) => overlapArea(a, b) < 1e-9);
    expect(Math.min(deep.length, apart.length)).toBeGreaterThan(20);
    expect(deep.filter((pair) => clashOf(pair) === null)).toEqual([]);
    expect(apart.filter((pair) => clashOf(pair) !== null)).toEqual([]);
  });

  test('the floor that both claim', () => {
    for (const { pieces } of clashes) expect(Math.abs(areaOf(clipConvex(...pieces)) - overlapArea(...pieces))).toBeLessThan(1e-4);
  });

  test('no move shorter than the depth parts them, and the shortest way out does', () => {
    for (const { pieces, depth } of clashes) {
      const [a, b] = pieces;
      const [exit] = listExits(pieces);
      expect(Math.hypot(exit?.x ?? 0, exit?.y ?? 0)).toBeCloseTo(depth, 6);
      for (let i = 0; i < 8; i += 1) {
        const [dx, dy] = [Math.cos((i * Math.PI) / 4) * depth * 0.999, Math.sin((i * Math.PI) / 4) * depth * 0.999];
        expect(overlapArea(a, moved(b, { x: dx, y: dy }))).toBeGreaterThan(0);
      }
    }
  });

  test('every way out leaves no shared floor, and after the shortest they touch', () => {
    for (const { pieces } of clashes) {
      const [a, b] = pieces;
      const exits = listExits(pieces);
      for (const exit of exits) expect(overlapArea(a, moved(b, exit))).toBeLessThan(1e-3);
      for (const exit of exits.slice(0, 1)) expect(DistanceOp.distance(toJts(a), toJts(moved(b, exit)))).toBeLessThan(1e-6);
    }
  });
});

const areaOf = (polygon: Polygon): number => (polygon.length < 3 ? 0 : toJts(polygon).getArea());

describe('heights', () => {
  const [a, b] = [square(0, 0, 500), square(100, 0, 500)];
  test.each([
    { name: 'one above the other', one: [0, 800], other: [800, 1200], depth: null },
    { name: 'by the 1 mm left to drawing', one: [0, 801], other: [800, 1200], depth: null },
    { name: '5 mm in each other: least out of its way is up', one: [0, 805], other: [800, 1200], depth: 5 },
    { name: 'a thin board through a tall post goes out sideways', one: [0, 3000], other: [800, 830], depth: 400 },
  ])('$name', ({ one: [from = 0, to = 0], other: [otherFrom = 0, otherTo = 0], depth }) => {
    expect(findClash(body(a, from, to), body(b, otherFrom, otherTo))?.depth ?? null).toBe(depth);
    expect(findClash(body(b, otherFrom, otherTo), body(a, from, to))?.depth ?? null).toBe(depth);
  });
});

describe('a hood is hollow', () => {
  const hood = body(square(0, 0, 1000), 2000, 2400, 'hood');
  test.each([
    { name: 'wholly under it, up to its top', piece: square(0, 0, 400), zTo: 2400, depth: null },
    { name: 'wholly under it, touching the lip from inside', piece: square(300, 0, 400), zTo: 2400, depth: null },
    { name: 'wholly under it, through its top', piece: square(0, 0, 400), zTo: 2450, depth: 50 },
    { name: 'across its lip', piece: square(500, 0, 400), zTo: 2400, depth: 200 },
    { name: 'across its lip, below it', piece: square(500, 0, 400), zTo: 2000, depth: null },
  ])('$name', ({ piece, zTo, depth }) => {
    expect(findClash(hood, body(piece, 0, zTo))?.depth ?? null).toBe(depth);
    expect(findClash(body(piece, 0, zTo), hood)?.depth ?? null).toBe(depth);
  });

  test('two hoods cannot hang in each other', () => {
    expect(findClash(hood, body(square(0, 0, 400), 2000, 2300, 'hood'))?.depth).toBe(300);
  });
});
