import { expect, test } from 'vitest';
import { type Body, createBody } from '../../src/geometry';
import { listGaps } from '../../src/geometry/passageGaps';
import { points } from '../support/motions';

const post = (x: number, size = 100) => createBody(points([x, 0], [x + size, 0], [x + size, 100], [x, 100]));
const outline = () => points([0, 0], [9, 0], [0, 9]);
const gaps = (room: ReturnType<typeof outline>, bodies: readonly Body[], limit: number) =>
  listGaps(room, bodies, limit).map(({ i, j, pair }) => [i, j, pair.distance]);

// Worked by hand: posts 100 wide at 0, 300 and 600 leave 200 between neighbours and 500 between the outer two.
const STILL = [post(0), post(300), post(600)];
const EACH = [
  [0, 1, 200],
  [1, 2, 200],
  [0, 2, 500],
];

test('narrowest first, ties in the order of the bodies', () => {
  expect(gaps(outline(), STILL, 501)).toEqual(EACH);
  expect(gaps(outline(), [STILL[2], STILL[0], STILL[1]] as Body[], 501)).toEqual([
    [0, 2, 200],
    [1, 2, 200],
    [0, 1, 500],
  ]);
});

test.each([
  { name: 'nothing has moved', next: STILL, found: EACH },
  {
    name: 'the last has moved up to 50 beside the one before it',
    next: [...STILL.slice(0, 2), post(450)],
    found: [
      [1, 2, 50],
      [0, 1, 200],
      [0, 2, 350],
    ],
  },
  {
    name: 'the first has moved away',
    next: [post(150), ...STILL.slice(1)],
    found: [
      [0, 1, 50],
      [1, 2, 200],
      [0, 2, 350],
    ],
  },
  { name: 'the first is gone', next: STILL.slice(1), found: [[0, 1, 200]] },
  { name: 'the middle one is gone', next: [STILL[0], STILL[2]] as Body[], found: [[0, 1, 500]] },
  {
    name: 'one is new, in the middle of the list',
    next: [STILL[0], post(1000), ...STILL.slice(1)] as Body[],
    found: [
      [0, 2, 200],
      [2, 3, 200],
      [1, 3, 300],
      [0, 3, 500],
    ],
  },
  { name: 'the order has changed', next: STILL.toReversed(), found: EACH },
  {
    name: 'only one of three still stands',
    next: [STILL[0], post(320), post(640)] as Body[],
    found: [
      [0, 1, 220],
      [1, 2, 220],
    ],
  },
])('a list that is taken over: $name', ({ next, found }) => {
  const room = outline();
  gaps(room, STILL, 501);
  expect(gaps(room, next, 501)).toEqual(found);
  // Another limit makes the list anew.
  gaps(outline(), [], 1);
  expect(gaps(outline(), next, 501)).toEqual(found);
});

test('a gap as wide as the limit is not under it', () => {
  // The foot of the perpendicular from (0, 0) to the slanted wall is (3, 4); the box about the wall is 1 away.
  const bodies = [createBody(points([0, 0])), createBody(points([-1, 7], [7, 1]))];
  expect(gaps(outline(), bodies, 5)).toEqual([]);
  expect(gaps(outline(), bodies, 5.001)).toEqual([[0, 1, 5]]);
  // Square to each other the boxes say as much.
  expect(gaps(outline(), STILL.slice(0, 2), 200)).toEqual([]);
  expect(gaps(outline(), STILL.slice(0, 2), 200.001)).toEqual([[0, 1, 200]]);
});

test('gaps between what still stands are the same objects, unless too little still stands', () => {
  const room = outline();
  const [first] = listGaps(room, STILL, 501);
  expect(listGaps(room, [...STILL.slice(0, 2), post(700)], 501)[0]).toBe(first);
  // Behind a body that is new, under other numbers.
  expect(listGaps(room, [post(2000), ...STILL.slice(0, 2)], 501)[0]?.pair).toBe(first?.pair);
  expect(listGaps(room, [...STILL.slice(0, 2), post(900), post(1800), post(2700)], 501)[0]?.pair).not.toBe(first?.pair);
});
