import { describe, expect, test } from 'vitest';
import { centredRectangle, lerp, type Point, type Polygon, solveWidestPassage } from '../../src/geometry';
import { bodiesOf } from '../support/bodiesOf';
import { MOTIONS, points } from '../support/motions';
import { createRandom } from '../support/seeded';

/** Rooms with arms, a jog of 50 and a partition, so that walls face each other from both sides. */
const ROOMS = [
  points([0, 0], [3000, 0], [3000, 2400], [0, 2400]),
  points([0, 0], [3000, 0], [3000, 1200], [1500, 1200], [1500, 2400], [0, 2400]),
  points([0, 0], [1400, 0], [1400, 50], [3000, 50], [3000, 2400], [1600, 2400], [1600, 900], [1500, 900], [1500, 2400], [0, 2400]),
];

interface Scene {
  room: Polygon;
  obstacles: Polygon[];
  from: Point;
  to: Point;
}

/** Bodies at random, but many of them square to the walls and on a coarse raster, so that they touch, align and overlap. */
function createScene(seed: number): Scene {
  const random = createRandom(seed * 7919 + 11);
  const snap = (value: number) => Math.round(value / 300) * 300;
  const room = ROOMS[seed % ROOMS.length] as Polygon;
  const obstacles = Array.from({ length: 3 + Math.floor(random() * 9) }, () => {
    const [x, y, width, depth] = [random() * 3000, random() * 2400, 100 + random() * 700, 100 + random() * 300];
    if (random() < 0.4) return centredRectangle({ x, y }, random() * 360, width, depth);
    return centredRectangle({ x: snap(x), y: snap(y) }, 0, Math.max(300, snap(width)), Math.max(300, snap(depth)));
  });
  if (seed % 6 === 5)
    obstacles.push(centredRectangle({ x: 1450 + random() * 100, y: 1200 }, random() * 20 - 10, 200, 2000 + random() * 800));
  /** The clearest of some places at one end of the room, so that it is mostly the way that decides and not where it begins. */
  const placeFrom = (column: number): Point => {
    const places = Array.from({ length: 200 }, () => ({
      x: (column + Math.round(random() * 36)) * STEP,
      y: Math.round(random() * 96) * STEP,
    }));
    const roomAt = (p: Point) => clearanceAt({ room, obstacles }, p);
    return places.reduce((best, p) => (roomAt(p) > roomAt(best) ? p : best));
  };
  return { room, obstacles, from: placeFrom(4), to: placeFrom(80) };
}

const solve = ({ room, obstacles, from, to }: Scene) => solveWidestPassage(room, bodiesOf(obstacles), from, to).width;

const STEP = 25;
const SEEDS = Array.from({ length: 48 }, (_, seed) => seed);

test('in more than a third of the seeds it is a gap that decides, and in some there is no way at all', () => {
  const scenes = SEEDS.map(createScene);
  const isGap = (scene: Scene) => solve(scene) < 2 * Math.min(clearanceAt(scene, scene.from), clearanceAt(scene, scene.to)) - 1;
  expect(scenes.filter(isGap).length).toBeGreaterThan(SEEDS.length / 3);
  expect(scenes.filter((scene) => solve(scene) === 0).length).toBeGreaterThan(2);
});

describe.each(SEEDS)('seed %i', (seed) => {
  const scene = createScene(seed);
  const width = solve(scene);

  test.each([200, 500, 900])('asked only up to %i it is the same up to there', (enough) => {
    const { room, obstacles, from, to } = scene;
    const asked = solveWidestPassage(room, bodiesOf(obstacles), from, to, enough).width;
    expect(Math.min(asked, enough)).toBeCloseTo(Math.min(width, enough), 9);
  });

  test('agrees with a flood of the floor', () => {
    // A way of clearance c passes within √½ steps of grid points, and so does the flood's between two of them.
    expect(Math.abs(width - flood(scene))).toBeLessThan(Math.SQRT2 * STEP);
  });

  test('is the same moved, mirrored, from the other end, and whatever the order of corners and bodies', () => {
    for (const { move } of MOTIONS) {
      const moved = {
        room: scene.room.map(move),
        obstacles: scene.obstacles.map((o) => o.map(move)),
        from: move(scene.from),
        to: move(scene.to),
      };
      const turned = {
        room: moved.room.toReversed(),
        obstacles: moved.obstacles.map((o) => o.toReversed()).toReversed(),
        from: moved.to,
        to: moved.from,
      };
      expect(solve(moved)).toBeCloseTo(width, 5);
      expect(solve(turned)).toBeCloseTo(width, 5);
    }
  });

  test('the pinch is as wide as the way, or half of it where a place stands near a body', () => {
    const { pinch } = solveWidestPassage(scene.room, bodiesOf(scene.obstacles), scene.from, scene.to);
    const long = pinch ? Math.hypot(pinch.b.x - pinch.a.x, pinch.b.y - pinch.a.y) : Number.NaN;
    expect(Math.min(Math.abs(long - width), Math.abs(2 * long - width))).toBeLessThan(1e-9);
  });

  test('one more body never widens it, and a body cut in two is the same body', () => {
    for (const [i, body] of scene.obstacles.entries()) {
      const others = scene.obstacles.toSpliced(i, 1);
      expect(solve({ ...scene, obstacles: others })).toBeGreaterThanOrEqual(width - 1e-9);
      expect(solve({ ...scene, obstacles: [...others, ...halvesOf(body)] })).toBeCloseTo(width, 6);
    }
  });
});

function halvesOf(body: Polygon): Polygon[] {
  const [a, b, c, d] = body as [Point, Point, Point, Point];
  const [top, bottom] = [lerp(a, b, 0.5), lerp(d, c, 0.5)];
  return [
    [a, top, bottom, d],
    [top, b, c, bottom],
  ];
}

// Worked by hand.
const box = (x0: number, y0: number, x1: number, y1: number) => points([x0, y0], [x1, y0], [x1, y1], [x0, y1]);
const HALL = box(0, 0, 6000, 3000);
test.each([
  {
    name: 'a body that swallows a whole short wall',
    room: ROOMS[2] as Polygon,
    obstacles: [box(1300, -100, 1500, 200)],
    from: [500, 450],
    to: [2500, 450],
    width: 700,
  },
  {
    name: 'a body across the way, let into both walls',
    room: HALL,
    obstacles: [box(2900, -50, 3100, 3050)],
    from: [1000, 1500],
    to: [5000, 1500],
    width: 0,
  },
  {
    name: 'a barrier of three bodies that overlap',
    room: HALL,
    obstacles: [box(2900, 0, 3100, 1100), box(2800, 1000, 3000, 2100), box(2900, 2000, 3100, 3000)],
    from: [1000, 1500],
    to: [5000, 1500],
    width: 0,
  },
  {
    name: 'the same with one of them 800 from the wall',
    room: HALL,
    obstacles: [box(2900, 0, 3100, 1100), box(2800, 1000, 3000, 2200)],
    from: [1000, 1500],
    to: [5000, 1500],
    width: 800,
  },
  {
    name: 'a ring of bodies about one place, its widest gap 650',
    room: HALL,
    obstacles: [box(1000, 200, 3000, 300), box(1000, 2500, 3000, 2600), box(900, 200, 1000, 2600), box(3000, 200, 3100, 1850)],
    from: [2000, 1400],
    to: [5000, 1500],
    width: 650,
  },
  {
    name: 'a body in the middle of a corridor leaves the wider side',
    room: HALL,
    obstacles: [box(2000, 1000, 4000, 1800)],
    from: [1000, 1500],
    to: [5000, 1500],
    width: 1200,
  },
  { name: 'both places in the same spot', room: HALL, obstacles: [], from: [1000, 1500], to: [1000, 1500], width: 2000 },
  { name: 'a place against a wall', room: HALL, obstacles: [], from: [1000, 0], to: [5000, 1500], width: 0 },
  { name: 'round the end of a partition', room: ROOMS[2] as Polygon, obstacles: [], from: [750, 1650], to: [2300, 1650], width: 850 },
] as const)('widest passage: $name', ({ room, obstacles, from, to, width }) => {
  const scene = { room, obstacles: [...obstacles], from: { x: from[0], y: from[1] }, to: { x: to[0], y: to[1] } };
  for (const { move } of MOTIONS) {
    const moved = { room: room.map(move), obstacles: obstacles.map((o) => o.map(move)), from: move(scene.from), to: move(scene.to) };
    expect(solve(moved)).toBeCloseTo(width, 5);
  }
});

// source: ADA Standards (2010) 403.5.1: 32 in clear over at most 24 in of way · read. The stubs are such a pinch.
test('two stubs that leave 32 in', () => {
  const stubs = [box(2900, 0, 3100, 1500 - 406.4), box(2900, 1500 + 406.4, 3100, 3000)];
  expect(solve({ room: HALL, obstacles: stubs, from: { x: 1000, y: 1500 }, to: { x: 5000, y: 1500 } })).toBeCloseTo(812.8, 9);
});

/** The widest way over the points of a grid: joined from the clearest down until the two places hang together. */
function flood(scene: Scene): number {
  const [columns, rows] = [121, 97];
  const clearance = new Float64Array(columns * rows).map((_, k) =>
    clearanceAt(scene, { x: Math.floor(k / rows) * STEP, y: (k % rows) * STEP }),
  );
  const root = Int32Array.from(clearance, (_, k) => k);
  const find = (k: number): number => {
    while (root[k] !== k) k = root[k] = root[root[k] as number] as number;
    return k;
  };
  const [start, end] = [scene.from, scene.to].map((p) => Math.round(p.x / STEP) * rows + Math.round(p.y / STEP)) as [number, number];
  const isOpen = new Uint8Array(clearance.length);
  const order = [...clearance.keys()].filter((k) => (clearance[k] as number) >= 0);
  for (const k of order.sort((a, b) => (clearance[b] as number) - (clearance[a] as number))) {
    isOpen[k] = 1;
    for (let dx = -1; dx <= 1; dx++) {
      for (let dy = -1; dy <= 1; dy++) {
        const [x, y] = [Math.floor(k / rows) + dx, (k % rows) + dy];
        if (x < 0 || x >= columns || y < 0 || y >= rows || !isOpen[x * rows + y]) continue;
        root[find(x * rows + y)] = find(k);
      }
    }
    if (isOpen[start] && isOpen[end] && find(start) === find(end)) return 2 * (clearance[k] as number);
  }
  return 0;
}

function clearanceAt({ room, obstacles }: Pick<Scene, 'room' | 'obstacles'>, p: Point): number {
  return Math.min(-distanceOut(room, p), ...obstacles.map((body) => distanceOut(body, p)));
}

/** Distance to the outline, negative inside: by counting turns about the point, unlike the code under test. */
function distanceOut(polygon: Polygon, p: Point): number {
  let [turns, least] = [0, Number.POSITIVE_INFINITY];
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] as Point;
    const side = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
    if (a.y <= p.y && b.y > p.y && side > 0) turns++;
    if (a.y > p.y && b.y <= p.y && side < 0) turns--;
    const part = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / ((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
    const t = Math.min(1, Math.max(0, part));
    least = Math.min(least, Math.hypot(p.x - a.x - t * (b.x - a.x), p.y - a.y - t * (b.y - a.y)));
  });
  return turns === 0 ? least : -least;
}
