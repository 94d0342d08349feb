import { describe, expect, test } from 'vitest';
import { centredRectangle, distance, findStandingPlace, type Point, type Polygon } from '../../src/geometry';
import { bodiesOf } from '../support/bodiesOf';
import { MOTIONS, points } from '../support/motions';
import { createRandom } from '../support/seeded';

const ROOM = points([0, 0], [4000, 0], [4000, 3000], [0, 3000]);
const box = (x0: number, y0: number, x1: number, y1: number) => points([x0, y0], [x1, y0], [x1, y1], [x0, y1]);

interface Case {
  name: string;
  near: [number, number];
  region?: Polygon[];
  obstacles?: Polygon[];
  width?: number;
  within?: number;
  /** Distance of the nearest free place; null for none. */
  away: number | null;
}

// Worked by hand: a circle of 700 unless said otherwise.
const CASES: Case[] = [
  { name: 'the place itself', near: [2000, 1500], away: 0 },
  { name: 'from a wall, half the width', near: [2000, 0], away: 350 },
  { name: 'from a corner of the room, half the width both ways', near: [0, 0], away: Math.hypot(350, 350) },
  { name: 'from the edge of a table', near: [2000, 762], obstacles: [box(0, 0, 4000, 762)], away: 350 },
  { name: 'from the corner of a body, on the circle about it', near: [2000, 1500], obstacles: [box(1000, 500, 2000, 1500)], away: 350 },
  {
    name: 'from the inner corner of two tables, where both moved edges meet',
    near: [700, 700],
    obstacles: [box(0, 0, 3000, 700), box(0, 700, 700, 3000)],
    away: Math.hypot(350, 350),
  },
  {
    name: 'in a gap of exactly the width',
    near: [2000, 700],
    obstacles: [box(1000, 700, 1650, 1800), box(2350, 700, 3000, 1800), box(0, 0, 4000, 700)],
    away: 350,
  },
  {
    name: 'above a gap that is 0.1 too narrow',
    near: [2000, 700],
    obstacles: [box(1000, 700, 1650.1, 1800), box(2350, 700, 3000, 1800), box(0, 0, 4000, 700)],
    // The circle rests on both corners of the gap: its centre is √(350² − 349.95²) above their line.
    away: Math.hypot(0.05, 1100 + Math.sqrt(350 ** 2 - 349.95 ** 2)),
  },
  { name: 'on the edge of the region', near: [1000, 1500], region: [box(2000, 1000, 3000, 2000)], away: 1000 },
  { name: 'where the region meets a moved edge', near: [1000, 0], region: [box(1500, 0, 3000, 2000)], away: Math.hypot(500, 350) },
  {
    name: 'in the second piece of a region',
    near: [3500, 1500],
    region: [box(500, 500, 900, 900), box(2000, 1000, 3000, 2000)],
    away: 500,
  },
  { name: 'nowhere within reach', near: [2000, 0], within: 349, away: null },
  {
    name: 'nowhere in a region full of tables',
    near: [1000, 500],
    region: [box(0, 0, 2000, 1000)],
    obstacles: [box(0, 0, 2000, 1000)],
    away: null,
  },
  {
    name: 'nowhere in a region that is covered up to its edge',
    near: [1000, 500],
    region: [box(0, 0, 2000, 1000)],
    obstacles: [box(-10, 0, 2349, 1349)],
    away: null,
  },
  { name: 'nowhere without a region', near: [2000, 1500], region: [], away: null },
  { name: 'nowhere when the circle is wider than the room', near: [2000, 1500], width: 3001, within: 5000, away: null },
];

describe.each(CASES)(
  'the nearest free place: $name',
  ({ near: [x, y], region = [ROOM], obstacles = [], width = 700, within = 3000, away }) => {
    test.each(MOTIONS)('$name', ({ move }) => {
      const moved = (polygon: Polygon) => polygon.map(move);
      const search = { region: region.map(moved), room: moved(ROOM), obstacles: obstacles.map(moved), near: move({ x, y }), width, within };
      for (const each of [search, { ...search, room: search.room.toReversed(), obstacles: search.obstacles.map((o) => o.toReversed()) }]) {
        const found = findStandingPlace({ ...each, obstacles: bodiesOf(each.obstacles) });
        expect(found?.distance ?? Number.POSITIVE_INFINITY).toBeCloseTo(away ?? Number.POSITIVE_INFINITY, 3);
        expect(found === null || Math.abs(distance(found.centre, each.near) - found.distance) < 1e-9).toBe(true);
      }
    });
  },
);

// One room object throughout, so that what is known of the last searches is looked at. Wanted is (2000, 1500), the region 900 to its right.
test('one search after another in one room', () => {
  const room = ROOM.map((p) => p);
  const region = [box(2900, 0, 4000, 3000)];
  const asked = { region, room, near: { x: 2000, y: 1500 }, width: 600, within: 950, obstacles: bodiesOf([]) };
  const away = (changes: Partial<typeof asked>) => findStandingPlace({ ...asked, ...changes })?.distance ?? null;
  expect(away({})).toBe(900);
  expect(away({ within: 899 })).toBeNull();
  expect(away({})).toBe(900);
  expect(away({ near: { x: 2100, y: 1500 } })).toBe(800);
  expect(away({ near: { x: 2000, y: 290 } })).toBeCloseTo(Math.hypot(900, 10), 6);
  expect(away({ region: [box(2800, 0, 4000, 3000)] })).toBe(800);
  expect(away({ width: 2300 })).toBeNull();
  // The circle about (2900, 1500) reaches 3200: what begins at 3190 takes it, though it is more than 950 + 200 away.
  expect(away({ obstacles: bodiesOf([box(3190, 0, 4000, 3000)]) })).toBeNull();
  expect(away({ obstacles: bodiesOf([box(3200, 0, 4000, 3000)]) })).toBe(900);
  // One that begins at 3190 between 1400 and 1600: along the region's edge until the circle rests on its corner (3190, 1600).
  const aside = 100 + Math.sqrt(300 ** 2 - 290 ** 2);
  expect(away({ obstacles: bodiesOf([box(3190, 1400, 4000, 1600)]) })).toBeCloseTo(Math.hypot(900, aside), 4);
  // A post of 20 before the wanted place: aside by 310, so that the circle touches its edge at 1510.
  expect(away({ obstacles: bodiesOf([box(2600, 1490, 2900, 1510)]), within: 1000 })).toBeCloseTo(Math.hypot(900, 310), 6);
  expect(away({})).toBe(900);
});

describe('against a 20 mm grid in seeded rooms', () => {
  const room = points([0, 0], [3000, 0], [3000, 1500], [1700, 1500], [1700, 2600], [0, 2600]);
  const SEEDS = Array.from({ length: 20 }, (_, seed) => seed);
  const createSearch = (seed: number): Search => {
    const random = createRandom(seed * 104_729 + 3);
    const obstacles = Array.from({ length: 3 + Math.floor(random() * 8) }, () =>
      centredRectangle({ x: random() * 3000, y: random() * 2600 }, random() * 360, 100 + random() * 900, 100 + random() * 500),
    );
    const near = { x: random() * 3000, y: random() * 2600 };
    const region = [centredRectangle({ x: random() * 3000, y: random() * 2600 }, random() * 360, 2000, 2000)];
    return { region, room, obstacles, near, width: 400 + random() * 300, within: 1500 };
  };

  test.each(SEEDS)('seed %i', (seed) => {
    const search = createSearch(seed);
    const found = findStandingPlace({ ...search, obstacles: bodiesOf(search.obstacles) });
    const [exact, onGrid] = [found?.distance ?? Number.POSITIVE_INFINITY, nearestOnGrid(search, 20)];
    expect(found ? leastRoom(search, found.centre) : 0).toBeGreaterThan(-1e-5);
    // No grid point is nearer than the exact place, and where the grid has one it is not much farther.
    expect(exact).toBeLessThanOrEqual(onGrid);
    expect(Number.isFinite(onGrid) ? onGrid - exact : 0).toBeLessThan(150);
  });

  test('the grid finds a place in most of the seeds', () => {
    expect(SEEDS.filter((seed) => Number.isFinite(nearestOnGrid(createSearch(seed), 40))).length).toBeGreaterThan(SEEDS.length / 2);
  });
});

interface Search {
  region: Polygon[];
  room: Polygon;
  obstacles: Polygon[];
  near: Point;
  width: number;
  within: number;
}

/** The distance of the nearest free grid point; Infinity when there is none. */
function nearestOnGrid(search: Search, step: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let x = 0; x <= 3000; x += step) {
    for (let y = 0; y <= 2600; y += step) {
      const away = Math.hypot(x - search.near.x, y - search.near.y);
      if (away <= search.within && away < least && leastRoom(search, { x, y }) >= 0) least = away;
    }
  }
  return least;
}

/** By how much a place keeps clear of all that it must; negative when it doesn't. Written without the code under test. */
function leastRoom({ region, room, obstacles, width }: Search, p: Point): number {
  const intoRegion = Math.max(...region.map((piece) => -signedDistance(piece, p)));
  return Math.min(intoRegion, -signedDistance(room, p) - width / 2, ...obstacles.map((body) => signedDistance(body, p) - width / 2));
}

/** Distance to the outline of a polygon, negative inside: by winding number and projection. */
function signedDistance(polygon: Polygon, p: Point): number {
  let [turns, least] = [0, Number.POSITIVE_INFINITY];
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] as Point;
    turns += Math.atan2((a.x - p.x) * (b.y - p.y) - (a.y - p.y) * (b.x - p.x), (a.x - p.x) * (b.x - p.x) + (a.y - p.y) * (b.y - p.y));
    const t = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / ((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
    const [u] = [Math.min(1, Math.max(0, t))];
    least = Math.min(least, Math.hypot(p.x - a.x - u * (b.x - a.x), p.y - a.y - u * (b.y - a.y)));
  });
  return Math.abs(turns) > Math.PI ? -least : least;
}
