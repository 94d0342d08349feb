import { describe, expect, test } from 'vitest';
import { type Body, centredRectangle, createBody, createPassageSearch, type Point, solveWidestPassage } from '../../src/geometry';
import { bodiesOf } from '../support/bodiesOf';
import { MOTIONS, points } from '../support/motions';
import { createRandom } from '../support/seeded';

const ROOM = points([0, 0], [3000, 0], [3000, 1200], [1500, 1200], [1500, 2400], [0, 2400]);

/** Bodies and places at random; some places lie in a body or out of the room. */
function createCase(seed: number) {
  const random = createRandom(seed * 104_729 + 3);
  const at = (): Point => ({ x: random() * 3000, y: random() * 2400 });
  const obstacles = Array.from({ length: 10 }, () => centredRectangle(at(), random() * 360, 100 + random() * 600, 100 + random() * 300));
  return { obstacles, places: Array.from({ length: 7 }, at) };
}

// One search for all places must say of each two what a search for them alone says.
describe.each(Array.from({ length: 24 }, (_, seed) => seed))('seed %i', (seed) => {
  const { obstacles, places } = createCase(seed);
  const bodies = bodiesOf(obstacles);
  test.each([200, 900, Number.POSITIVE_INFINITY])('every two of seven places, asked up to %d', (enough) => {
    const passage = createPassageSearch(ROOM, bodies, enough).solve(places);
    const upTo = (width: number) => Math.min(width, enough).toFixed(6);
    for (const [i, from] of places.entries()) {
      const alone = places.map((to) => upTo(solveWidestPassage(ROOM, bodies, from, to, enough).width));
      const together = places.map((_, j) => upTo(passage(i, j).width));
      expect(together.filter((_, j) => j !== i)).toEqual(alone.filter((_, j) => j !== i));
    }
  });
});

test.each(Array.from({ length: 12 }, (_, seed) => seed))('seed %i: without some obstacles it is as if they had never been', (seed) => {
  const { obstacles, places } = createCase(seed);
  const stands = (i: number) => i % 3 !== seed % 3;
  const [from, to] = [places[0] as Point, places[1] as Point];
  const found = createPassageSearch(ROOM, bodiesOf(obstacles)).solve(places, stands)(0, 1).width;
  const left = obstacles.filter((_, i) => stands(i));
  expect(found).toBeCloseTo(solveWidestPassage(ROOM, bodiesOf(left), from, to).width, 6);
});

// Worked by hand: three bays of one room, the doors between them 700 and 500 wide.
test('the pinch of each two is the narrowest gap between them', () => {
  const room = points([0, 0], [6000, 0], [6000, 2000], [0, 2000]);
  const walls = [points([1950, 0], [2050, 0], [2050, 1300], [1950, 1300]), points([3950, 500], [4050, 500], [4050, 2000], [3950, 2000])];
  const places = points([1000, 1000], [3000, 1000], [5000, 1000]);
  for (const { move } of MOTIONS) {
    const passage = createPassageSearch(room.map(move), bodiesOf(walls.map((wall) => wall.map(move)))).solve(places.map(move));
    expect(passage(0, 1).width).toBeCloseTo(700, 6);
    expect(passage(1, 2).width).toBeCloseTo(500, 6);
    expect(passage(2, 0).width).toBeCloseTo(500, 6);
  }
});

test('no more places than fit', () => {
  const places = Array.from({ length: 32 }, (_, i) => ({ x: i + 1, y: 100 }));
  expect(() => createPassageSearch(ROOM, []).solve(places)).toThrow(RangeError);
  expect(createPassageSearch(ROOM, []).solve(places.slice(0, 31))(0, 30).width).toBeCloseTo(2, 6);
});

test('a gap just within the limit is found whether the list is made anew or taken over', () => {
  const room = points([0, -3000], [9000, -3000], [9000, 3000], [0, 3000]);
  const block = (from: number, to: number) => points([from, -200], [to, -200], [to, 0], [from, 0]);
  // In floating point 4663.8 + 914.4 is 5578.2, and 5578.2 − 4663.8 less than 914.4.
  const right = [block(5578.2, 9000), ...[6000, 7000, 8000].map((x) => points([x, 1000], [x + 200, 1000], [x + 200, 1200], [x, 1200]))];
  const places = points([5100, -2000], [5100, 2000]);
  const widthWith = (bodies: Body[]) => createPassageSearch(room, bodies, 914.4).solve(places)(0, 1).width;
  const still = bodiesOf(right);
  widthWith([createBody(block(0, 4000)), ...still]);
  const takenOver = widthWith([createBody(block(0, 4663.8)), ...still]);
  expect(takenOver).toBe(5578.2 - 4663.8);
  expect(widthWith(bodiesOf([block(0, 4663.8), ...right]))).toBe(takenOver);
});

test('of two places with as little clearance the narrowest is at the first', () => {
  const room = points([0, 0], [3000, 0], [3000, 2000], [0, 2000]);
  const places = points([300, 1000], [2700, 1000]);
  const [from, to] = places as [Point, Point];
  const first = { width: 600, pinch: { a: from, b: { x: 0, y: 1000 } } };
  expect(solveWidestPassage(room, [], from, to)).toEqual(first);
  expect(createPassageSearch(room, []).solve(places)(0, 1)).toEqual(first);
});
