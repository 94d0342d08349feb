import { describe, expect, test } from 'vitest';
import {
  add,
  angleOf,
  centredRectangle,
  distance,
  findShapePlace,
  intersectionArea,
  isInside,
  type Point,
  type Polygon,
  rotate,
} from '../../src/geometry';
import { bodiesOf } from '../support/bodiesOf';
import { MOTIONS, points } from '../support/motions';
import { createRandom } from '../support/seeded';

const ROOM = points([0, 0], [4000, 0], [4000, 3000], [0, 3000]);
const box = (x0: number, y0: number, x1: number, y1: number) => points([x0, y0], [x1, y0], [x1, y1], [x0, y1]);
/** A T in a square of 1524: an arm of 914.4 across its top and one down its middle. ADA Standards 304.3.2 (read). */
const T: Polygon[] = [box(-762, -762, 762, 152.4), box(-457.2, -762, 457.2, 762)];
const FLAT = [box(-609.6, -381, 609.6, 381)];
const QUARTERS = [0, 90, 180, 270];

interface Case {
  name: string;
  pieces?: Polygon[];
  headings?: number[];
  obstacles: Polygon[];
  near: [number, number];
  within?: number;
  /** Distance of the nearest free place; null for none. */
  away: number | null;
}

// Worked by hand.
const CASES: Case[] = [
  { name: 'an open floor: the place itself', obstacles: [], near: [2000, 1500], away: 0 },
  { name: 'a flat rectangle at a wall, on its long side', pieces: FLAT, obstacles: [], near: [2000, 0], away: 381 },
  { name: 'the same in one heading only, on its short side', pieces: FLAT, headings: [90], obstacles: [], near: [2000, 0], away: 609.6 },
  { name: 'a T at a wall', obstacles: [], near: [2000, 0], away: 762 },
  {
    name: 'a T in a crossing of two ways of just 36 in',
    obstacles: [box(0, 0, 1000, 1000), box(1914.4, 0, 4000, 1000), box(0, 1914.4, 4000, 3000)],
    // The base goes up the side way, 609.6 beyond the edge at 1000: its centre is 152.4 below that edge.
    near: [1457.2, 1152.4],
    away: 0,
  },
  {
    name: 'the same a hair narrower',
    obstacles: [box(0, 0, 1000, 1000), box(1914.3, 0, 4000, 1000), box(0, 1914.4, 4000, 3000)],
    near: [1457.2, 1152.4],
    away: null,
  },
  {
    name: 'from aside: it slides to where it fits',
    obstacles: [box(0, 0, 1000, 1000), box(1914.4, 0, 4000, 1000), box(0, 1914.4, 4000, 3000)],
    near: [1457.2 + 300, 1152.4],
    away: 300,
  },
  {
    name: 'a side way too short for the base, a post in it',
    obstacles: [box(0, 0, 1000, 1000), box(1914.4, 0, 4000, 1000), box(0, 1914.4, 4000, 3000), box(1400, 300, 1500, 400)],
    near: [1457.2, 1152.4],
    // Its end lies at 390.4; the post reaches to 400.
    away: null,
  },
  { name: 'nowhere within reach', obstacles: [], near: [2000, 0], within: 761.9, away: null },
  { name: 'a floor full of tables', obstacles: [box(0, 0, 4000, 3000)], near: [2000, 1500], away: null },
];

describe.each(CASES)('$name', ({ pieces = T, headings = QUARTERS, obstacles, near, within = 1524, away }) => {
  test.each(MOTIONS)('$name', ({ move }) => {
    const room = ROOM.map(move);
    const found = findShapePlace({
      pieces,
      headingsDeg: headingsIn(room, headings),
      room,
      obstacles: bodiesOf(obstacles.map((body) => body.map(move))),
      near: move({ x: near[0], y: near[1] }),
      within,
    });
    expect(found === null).toBe(away === null);
    expect(found?.distance ?? 0).toBeCloseTo(away ?? 0, 4);
  });
});

/** Headings as the moved room has them: its first wall is heading 0. */
function headingsIn([a, b]: Polygon, headings: readonly number[]): number[] {
  if (a === undefined || b === undefined) return [];
  const turn = angleOf({ x: b.x - a.x, y: b.y - a.y });
  return headings.map((heading) => heading + turn);
}

test('against places tried one by one, every 60 mm', () => {
  const random = createRandom(12);
  let found = 0;
  for (let run = 0; run < 40; run++) {
    const obstacles = Array.from({ length: 6 }, () =>
      centredRectangle({ x: random() * 4000, y: random() * 3000 }, random() * 90, 200 + random() * 800, 200 + random() * 500),
    );
    const near = { x: 500 + random() * 3000, y: 500 + random() * 2000 };
    const place = findShapePlace({ pieces: T, headingsDeg: QUARTERS, room: ROOM, obstacles: bodiesOf(obstacles), near, within: 1524 });
    const isFree = (centre: Point, headingDeg: number) =>
      T.every((piece) => {
        const turned = piece.map((p) => add(rotate(p, headingDeg), centre));
        return isInside(ROOM, turned, 1e-3) && obstacles.every((body) => intersectionArea(body, turned) < 1);
      });
    found += place === null ? 0 : 1;
    expect(place === null || isFree(place.centre, place.headingDeg)).toBe(true);
    const least = place?.distance ?? 1524;
    const grid = Array.from({ length: 51 * 51 }, (_, k) => ({
      x: near.x - 1500 + 60 * (k % 51),
      y: near.y - 1500 + 60 * Math.floor(k / 51),
    }));
    const nearer = grid.filter((p) => distance(p, near) < least - 1e-3);
    expect(nearer.flatMap((p) => QUARTERS.filter((heading) => isFree(p, heading)))).toEqual([]);
  }
  expect(found).toBeGreaterThan(8);
  expect(found).toBeLessThan(40);
});

test.each([
  { within: 381, away: 381 },
  { within: 380.9, away: null },
])('a flat rectangle at a wall, 381 from where it is wanted, looked for within $within', ({ within, away }) => {
  const search = { pieces: FLAT, headingsDeg: [0], room: ROOM, obstacles: [], near: { x: 2000, y: 0 }, within };
  expect(findShapePlace(search)?.distance ?? null).toBe(away);
});
