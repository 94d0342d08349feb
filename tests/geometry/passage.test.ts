import { describe, expect, test } from 'vitest';
import { centredRectangle, containsPoint, distanceToOutline, type Point, type Polygon, solveWidestPassage } from '../../src/geometry';
import { bodiesOf } from '../support/bodiesOf';
import { MOTIONS, points } from '../support/motions';
import { createRandom } from '../support/seeded';

const ROOM = points([0, 0], [144, 0], [144, 96], [0, 96]);
const table = (x0: number, y0: number, x1: number, y1: number) => points([x0, y0], [x1, y0], [x1, y1], [x0, y1]);

// Worked by hand, inches. The first two: facing tables, fronts at 30 and 72.
test.each([
  { name: 'aisle between two tables', obstacles: [table(20, 0, 120, 30), table(20, 72, 120, 96)], width: 42 },
  {
    name: 'the same with a rack pulled out 10 in',
    obstacles: [table(20, 0, 120, 30), table(20, 72, 120, 96), table(60, 62, 80, 72)],
    width: 32,
  },
  { name: 'a table right across with no gap', obstacles: [table(60, 0, 80, 96)], width: 0 },
  { name: 'a table with 36 in left at one end', obstacles: [table(60, 0, 80, 60)], width: 36 },
  { name: 'a pillar: the wider side counts', obstacles: [table(60, 30, 80, 60)], width: 36 },
  { name: 'nothing in the way: the room itself', obstacles: [], width: 20 },
])('widest passage: $name', ({ name, obstacles, width }) => {
  const [from, to] = [
    { x: 10, y: name.startsWith('nothing') ? 40 : 51 },
    { x: 134, y: name.startsWith('nothing') ? 40 : 51 },
  ];
  // Neither place is nearer to a wall than 10 in, so wider ways are cut down to 20 in unless the walls are moved away.
  const wide = points([-200, 0], [400, 0], [400, 96], [-200, 96]);
  const room = name.startsWith('nothing') ? ROOM : wide;
  for (const { move } of MOTIONS) {
    const solve = (a: Point, b: Point) =>
      solveWidestPassage(room.map(move), bodiesOf(obstacles.map((o) => o.map(move))), move(a), move(b)).width;
    expect(solve(from, to)).toBeCloseTo(width, 4);
    expect(solve(to, from)).toBeCloseTo(width, 4);
  }
});

test('the pinch is the gap that decides', () => {
  const { pinch } = solveWidestPassage(
    points([-200, 0], [400, 0], [400, 96], [-200, 96]),
    bodiesOf([table(60, 0, 80, 60)]),
    { x: 10, y: 50 },
    { x: 134, y: 50 },
  );
  const ys = [pinch?.a.y, pinch?.b.y].toSorted((a, b) => Number(a) - Number(b));
  expect(ys).toEqual([60, 96]);
});

test('a place inside a table, or outside the room, can’t be reached', () => {
  expect(solveWidestPassage(ROOM, bodiesOf([table(60, 0, 80, 60)]), { x: 10, y: 50 }, { x: 70, y: 30 }).width).toBe(0);
  expect(solveWidestPassage(ROOM, [], { x: 10, y: 50 }, { x: 200, y: 30 }).width).toBe(0);
});

describe('against a flood of a 50 mm grid', () => {
  const room = points([0, 0], [4000, 0], [4000, 1800], [2200, 1800], [2200, 3500], [0, 3500]);
  test.each(Array.from({ length: 14 }, (_, i) => i))('seed %i', (seed) => {
    const random = createRandom(seed * 7919 + 1);
    const obstacles = Array.from({ length: 2 + Math.floor(random() * 9) }, () =>
      centredRectangle({ x: random() * 4000, y: random() * 3500 }, random() * 360, 100 + random() * 900, 100 + random() * 500),
    );
    const [from, to] = [placeIn(room, random), placeIn(room, random)];
    const solved = solveWidestPassage(room, bodiesOf(obstacles), from, to).width;
    const flooded = flood(room, obstacles, from, to);
    // The grid misses the widest way by less than a step on each side.
    expect(Math.abs(solved - flooded)).toBeLessThan(50);
  });
});

function placeIn(room: Polygon, random: () => number): Point {
  for (;;) {
    const p = { x: Math.round(random() * 80) * 50, y: Math.round(random() * 70) * 50 };
    if (containsPoint(room, p)) return p;
  }
}

/** The widest way by joining grid points, the clearest first, until the two places hang together. */
function flood(room: Polygon, obstacles: readonly Polygon[], from: Point, to: Point): number {
  const [step, columns, rows] = [50, 81, 71];
  const index = (p: Point) => Math.round(p.x / step) * rows + Math.round(p.y / step);
  const clearance = Array.from({ length: columns * rows }, (_, k) =>
    clearanceAt(room, obstacles, { x: Math.floor(k / rows) * step, y: (k % rows) * step }),
  );
  const root = clearance.map((_, k) => k);
  const find = (k: number): number => {
    let at = k;
    while (root[at] !== at) at = root[at] = root[root[at] as number] as number;
    return at;
  };
  const isOpen = new Set<number>();
  for (const k of [...clearance.keys()].sort((a, b) => (clearance[b] as number) - (clearance[a] as number))) {
    const width = 2 * (clearance[k] as number);
    if (width < 0) break;
    isOpen.add(k);
    for (const n of neighbours(k, rows)) if (isOpen.has(n)) root[find(n)] = find(k);
    if (isOpen.has(index(from)) && isOpen.has(index(to)) && find(index(from)) === find(index(to))) return width;
  }
  return 0;
}

function clearanceAt(room: Polygon, obstacles: readonly Polygon[], p: Point): number {
  if (!containsPoint(room, p) || obstacles.some((o) => containsPoint(o, p))) return -1;
  return Math.min(distanceToOutline(room, p), ...obstacles.map((o) => distanceToOutline(o, p)));
}

const neighbours = (k: number, rows: number) =>
  [-rows - 1, -rows, -rows + 1, -1, 1, rows - 1, rows, rows + 1]
    .filter((d) => Math.abs(((k + d) % rows) - (k % rows)) <= 1)
    .map((d) => k + d);
