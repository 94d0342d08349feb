import { centredRectangle, createBody, findStandingPlace, type Point, type Polygon, solveWidestPassage } from '../../src/geometry';
import { createRandom } from '../support/seeded.ts';
import type { Benchmark } from './benchmark.ts';

/** Twelve walls. */
const ROOM: Polygon = [
  [0, 0],
  [6000, 0],
  [6000, 1000],
  [7000, 1000],
  [7000, 4000],
  [6500, 4000],
  [6500, 5000],
  [3000, 5000],
  [3000, 4600],
  [2000, 4600],
  [2000, 5000],
  [0, 5000],
].map(([x = 0, y = 0]) => ({ x, y }));

const REGION = centredRectangle({ x: 3500, y: 2500 }, 0, 5000, 4000);

const [FROM, TO] = [
  { x: 500, y: 4300 },
  { x: 6300, y: 3000 },
];

/** Twenty-five bodies of the size of tables and carts, none of them within 450 of the two places. */
const OBSTACLES = createObstacles();

function createObstacles(): Polygon[] {
  const random = createRandom(4);
  const bodies: Polygon[] = [];
  while (bodies.length < 25) {
    const [x, y, turn] = [random() * 7000, random() * 5000, random() < 0.5 ? 0 : random() * 360];
    if ([FROM, TO].every((place) => Math.hypot(x - place.x, y - place.y) > 1100)) {
      bodies.push(centredRectangle({ x, y }, turn, 300 + random() * 600, 300 + random() * 400));
    }
  }
  return bodies;
}

/** The same as ways and places to stand meet them, as long as they stand. */
const BODIES = OBSTACLES.map((obstacle) => createBody(obstacle));

const fromMiddle = ({ x, y }: Point) => Math.hypot(x - 3500, y - 2500);

/** A corner of a body in the middle of the room. */
const NEAR = OBSTACLES.flat().reduce((best, p) => (fromMiddle(p) < fromMiddle(best) ? p : best));

export const benchmarks: Benchmark[] = [
  {
    name: 'widest passage, 12 walls and 25 bodies',
    unit: 'ms',
    target: 0.5,
    run: () => solveWidestPassage(ROOM, BODIES, FROM, TO),
  },
  {
    name: 'standing place among 25 bodies',
    unit: 'ms',
    target: 0.5,
    run: () =>
      findStandingPlace({
        region: [REGION],
        room: ROOM,
        obstacles: BODIES,
        near: NEAR,
        width: 700,
        within: 2000,
      }),
  },
];
