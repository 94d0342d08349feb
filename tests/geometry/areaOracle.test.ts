import { expect, test } from 'vitest';
import {
  area,
  boundsOf,
  containsPoint,
  depthBefore,
  distanceToOutline,
  floorBefore,
  isInside,
  measureProtrusion,
  nearestOnOutline,
  offsetConvex,
  type Point,
  penetration,
  projectOnPath,
  signedDistance,
  strip,
} from '../../src/geometry';
import { areaOf, between, common, createBodies, createStarRoom, grown, grownSharp, less, lineOf, placeOf } from '../support/areas';
import { createRandom } from '../support/seeded';

/** The oracle takes its time. */
const PATIENT = { timeout: 30_000 };

const SEEDS = Array.from({ length: 80 }, (_, seed) => seed);

/** Places about a room of `createStarRoom`: a third or so of them lie in it. */
function createPlaces(seed: number, count: number): Point[] {
  const random = createRandom(seed * 31 + 5);
  return Array.from({ length: count }, () => ({ x: random() * 6000, y: random() * 5000 }));
}

test('a place in a concave room, and how far it is from its walls', PATIENT, () => {
  let inside = 0;
  for (const seed of SEEDS) {
    const room = createStarRoom(seed);
    const [floor, walls] = [areaOf(room), areaOf(room).getBoundary()];
    for (const p of createPlaces(seed, 8)) {
      const [isIn, away] = [between(floor, placeOf(p)) === 0, between(walls, placeOf(p))];
      inside += isIn ? 1 : 0;
      expect([seed, containsPoint(room, p)]).toEqual([seed, isIn]);
      expect(signedDistance(room, p)).toBeCloseTo(isIn ? -away : away, 7);
      expect(distanceToOutline(room, p)).toBeCloseTo(away, 7);
      const nearest = nearestOnOutline(room, p);
      expect(Math.hypot(nearest.x - p.x, nearest.y - p.y)).toBeCloseTo(away, 7);
    }
  }
  expect(inside).toBeGreaterThan(SEEDS.length * 2);
});

test('a body is inside a concave room where nothing of it is left without the room; else it reaches out so far', PATIENT, () => {
  let inside = 0;
  for (const seed of SEEDS) {
    const room = createStarRoom(seed);
    const floor = areaOf(room);
    for (const body of createBodies(seed, 3)) {
      const out = less(areaOf(body), floor).getArea();
      inside += out === 0 ? 1 : 0;
      expect([seed, isInside(room, body)]).toEqual([seed, out === 0]);
      if (out === 0) continue;
      if (seed % 8 > 0) continue;
      // The floor within a little more than that takes all of it; within a little less it does not.
      const { by } = measureProtrusion(room, body);
      expect(less(areaOf(body), grown(floor, by * 1.001 + 0.1)).getArea()).toBeLessThan(1e-3);
      expect(less(areaOf(body), grown(floor, by * 0.998 - 0.1)).getArea()).toBeGreaterThan(0);
    }
  }
  expect(inside).toBeGreaterThan(10);
});

/** A path of two or three legs that turn by a right angle, or by 20° to 120°, either way. */
function createPath(random: () => number): Point[] {
  let [x, y, heading] = [random() * 6000, random() * 5000, random() * 360];
  return [
    { x, y },
    ...Array.from({ length: 2 + Math.floor(random() * 2) }, () => {
      const length = 1500 + random() * 900;
      x += length * Math.cos((heading * Math.PI) / 180);
      y += length * Math.sin((heading * Math.PI) / 180);
      heading += (random() < 0.5 ? 90 : 20 + random() * 100) * (random() < 0.5 ? 1 : -1);
      return { x, y };
    }),
  ];
}

test('a strip along a path with turns is the path grown to both sides, with sharp corners', PATIENT, () => {
  const random = createRandom(404);
  for (let run = 0; run < 50; run++) {
    const path = createPath(random);
    const half = 100 + random() * 250;
    const { pieces } = strip(path, half, half);
    const theirs = grownSharp(lineOf(path), half);
    let rest = theirs;
    let sum = 0;
    for (const piece of pieces) {
      sum += area(piece);
      rest = less(rest, grownSharp(areaOf(piece), 1e-4));
    }
    // A path that comes back over itself has the same floor twice.
    expect(rest.getArea()).toBeLessThan(5);
    expect(sum).toBeGreaterThan(theirs.getArea() - 5);
    for (const piece of pieces) expect(less(areaOf(piece), grown(theirs, 1e-3)).getArea()).toBeLessThan(1);
  }
});

test('a table with a turn meets a body exactly when one of its pieces overlaps it', PATIENT, () => {
  const random = createRandom(77);
  let [met, apart] = [0, 0];
  for (let run = 0; run < 150; run++) {
    const path = createPath(random);
    const { pieces } = strip(path, 273, 273);
    const table = grownSharp(lineOf(path), 273);
    for (const body of createBodies(run, 3)) {
      const shared = common(table, areaOf(body)).getArea();
      if (shared > 0 && shared < 1) continue;
      const depth = Math.max(...pieces.map((piece) => penetration(piece, body)));
      expect([run, depth > 1e-6]).toEqual([run, shared > 0]);
      if (shared > 0) met++;
      else apart++;
    }
  }
  expect(Math.min(met, apart)).toBeGreaterThan(30);
});

test('the depth of an overlap: moved by a little less they still overlap, whichever way', PATIENT, () => {
  let met = 0;
  for (const seed of SEEDS) {
    const bodies = createBodies(seed, 4);
    for (const [i, one] of bodies.entries()) {
      for (const other of bodies.slice(i + 1)) {
        const depth = penetration(one, other);
        if (depth < 1) continue;
        met++;
        const out = Array.from({ length: 36 }, (_, k) => ({ x: Math.cos((k * Math.PI) / 18), y: Math.sin((k * Math.PI) / 18) }));
        const left = out.map((d) => {
          const moved = other.map((p) => ({ x: p.x + d.x * depth * 0.999, y: p.y + d.y * depth * 0.999 }));
          return common(areaOf(one), areaOf(moved)).getArea();
        });
        expect(Math.min(...left)).toBeGreaterThan(0);
      }
    }
  }
  expect(met).toBeGreaterThan(20);
});

test('a convex body grown with sharp corners', PATIENT, () => {
  for (const seed of SEEDS) {
    for (const body of createBodies(seed, 2)) {
      const by = 10 + (seed % 7) * 30;
      const theirs = grownSharp(areaOf(body), by);
      const ours = areaOf(offsetConvex(body, by));
      expect(ours.getArea()).toBeCloseTo(theirs.getArea(), 2);
      expect(less(ours, grown(theirs, 1e-4)).getArea()).toBeLessThan(1e-3);
      const shrunk = offsetConvex(body, -by);
      expect(shrunk.length < 3 ? 0 : area(shrunk)).toBeCloseTo(grown(areaOf(body), -by).getArea(), 2);
    }
  }
});

test('a place beside a path: as far as the path is, and at its foot', PATIENT, () => {
  const random = createRandom(11);
  for (let run = 0; run < 150; run++) {
    const path = createPath(random);
    for (const p of createPlaces(run, 4)) {
      const { s, lateral, distance } = projectOnPath(path, p);
      expect(distance).toBeCloseTo(between(lineOf(path), placeOf(p)), 7);
      expect(Math.abs(lateral)).toBeLessThanOrEqual(distance + 1e-7);
      expect(s).toBeGreaterThanOrEqual(0);
    }
  }
});

test('how far before a face a body begins: the nearest of what it has in the strip before it', PATIENT, () => {
  let [before, beside] = [0, 0];
  const [face, normal] = [
    { a: { x: 2000, y: 1500 }, b: { x: 3200, y: 1500 } },
    { x: 0, y: 1 },
  ];
  for (const tolerance of [0, 5]) {
    const ahead = areaOf(floorBefore({ a: { x: 2000 + tolerance, y: 1500 }, b: { x: 3200 - tolerance, y: 1500 } }, normal, 1e5));
    for (const seed of SEEDS) {
      for (const body of createBodies(seed, 4)) {
        const shared = common(areaOf(body), ahead);
        const isThere = shared.getArea() > 0;
        const theirs = isThere ? boundsOf(shared.getCoordinates()).minY - 1500 : 9000;
        // What reaches before the face by no more than the tolerance stands beside it.
        const reach = boundsOf(body).maxY - 1500;
        expect(depthBefore(body, face, normal, 9000, tolerance)).toBeCloseTo(reach <= tolerance ? 9000 : Math.min(9000, theirs), 6);
        if (isThere) before++;
        else beside++;
      }
    }
  }
  expect(Math.min(before, beside)).toBeGreaterThan(100);
});
