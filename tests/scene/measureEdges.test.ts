import { expect, test } from 'vitest';
import type { Point, Segment } from '../../src/geometry';
import { distanceToWalls, measureWalls } from '../../src/scene/room/measureWalls';
import type { Wall } from '../../src/scene/types';
import { MOTIONS } from '../support/motions';
import { at, type Move, pathOf } from './hall';

interface Row {
  name: string;
  /** Walls from a to b, each looking toward the edge unless its name says otherwise. */
  walls: readonly string[];
  inward?: readonly [number, number];
  limit?: number;
  depth?: number;
  distance: number | null;
  isClosed: boolean;
}

/** An edge from (0, 0) to (1000, 0) that looks up the paper, to walls at negative y; closed within 150. */
const EDGE: Segment = { a: at(0, 0), b: at(1000, 0) };

const ROWS: Row[] = [
  { name: 'no wall', walls: [], distance: null, isClosed: false },
  { name: 'a wall all along at 100', walls: ['-500 -100, 1500 -100'], distance: 100, isClosed: true },
  { name: 'drawn the other way', walls: ['1500 -100, -500 -100'], distance: 100, isClosed: true },
  { name: 'just as long as the edge', walls: ['0 -100, 1000 -100'], distance: 100, isClosed: true },
  { name: 'at the limit', walls: ['0 -150, 1000 -150'], distance: 150, isClosed: true },
  { name: 'a hundredth beyond the limit', walls: ['0 -150.01, 1000 -150.01'], distance: 150.01, isClosed: false },
  { name: 'a wall that looks away', walls: ['-500 -100, 1500 -100'], inward: [0, -1], distance: null, isClosed: false },
  { name: 'a wall square to the edge', walls: ['500 -100, 500 -900'], inward: [1, 0], distance: null, isClosed: false },
  { name: 'a wall beside the edge', walls: ['1001 -100, 2000 -100'], distance: null, isClosed: false },
  { name: 'a wall on the other side', walls: ['1000.5 -100, -1 -100', '-2 -50, -1 -50'], distance: 100, isClosed: true },
  { name: 'ending a millimetre short', walls: ['0 -100, 999 -100'], distance: 100, isClosed: false },
  { name: 'beginning a millimetre late', walls: ['1 -100, 1000 -100'], distance: 100, isClosed: false },
  { name: 'two that meet', walls: ['0 -100, 400 -100', '400 -100, 1000 -100'], distance: 100, isClosed: true },
  { name: 'two that meet, in the other order, one nearer', walls: ['400 -40, 1000 -40', '0 -100, 400 -100'], distance: 40, isClosed: true },
  {
    name: 'two that overlap, the longer first',
    walls: ['0 -100, 900 -100', '100 -50, 300 -50', '800 -100, 1000 -100'],
    distance: 50,
    isClosed: true,
  },
  { name: 'two with a millimetre between them', walls: ['0 -100, 400 -100', '401 -100, 1000 -100'], distance: 100, isClosed: false },
  { name: 'two, the farther beyond the limit', walls: ['0 -100, 400 -100', '400 -200, 1000 -200'], distance: 100, isClosed: false },
  // From 100 at the left to 200 at the right it is beyond 150 from the middle on.
  { name: 'aslant, its half beyond the limit', walls: ['0 -100, 1000 -200'], distance: 100, isClosed: false },
  {
    name: 'aslant, and another before the half beyond the limit',
    walls: ['0 -100, 1000 -200', '500 -120, 1000 -120'],
    distance: 100,
    isClosed: true,
  },
  { name: 'the same, that other a millimetre late', walls: ['0 -100, 1000 -200', '501 -120, 1000 -120'], distance: 100, isClosed: false },
  {
    name: 'aslant the other way, and another before the half beyond the limit',
    walls: ['0 -200, 1000 -100', '0 -120, 500 -120'],
    distance: 100,
    isClosed: true,
  },
  { name: 'the same, that other a millimetre short', walls: ['0 -200, 1000 -100', '0 -120, 499 -120'], distance: 100, isClosed: false },
  { name: 'aslant up to the limit', walls: ['0 -100, 1000 -150'], distance: 100, isClosed: true },
  { name: 'cutting 30 in behind the edge', walls: ['0 30, 1000 30'], distance: -30, isClosed: true },
  { name: 'as far behind the edge as its depth is another wall', walls: ['0 350, 1000 350'], distance: null, isClosed: false },
  { name: 'a little less is the wall before it', walls: ['0 349.9, 1000 349.9'], distance: -349.9, isClosed: true },
  { name: 'in a shallow body', walls: ['0 30, 1000 30'], depth: 20, distance: null, isClosed: false },
  { name: '10 m off', walls: ['0 -10000, 1000 -10000'], distance: 10_000, isClosed: false },
  { name: 'farther than 10 m', walls: ['0 -10000.1, 1000 -10000.1'], distance: null, isClosed: false },
  { name: 'aslant, its near end within 10 m', walls: ['0 -9000, 1000 -11000'], distance: 9000, isClosed: false },
  { name: 'aslant, from behind to before the edge', walls: ['0 400, 1000 -100'], distance: -400, isClosed: true },
  { name: 'of three the nearest', walls: ['0 -90, 300 -90', '300 -80, 600 -80', '600 -85, 1000 -85'], distance: 80, isClosed: true },
];

test.each(ROWS)('walls before an edge: $name', ({ walls, inward = [0, 1], limit = 150, depth = 350, distance, isClosed }) => {
  for (const { name, move } of MOTIONS.filter((motion) => motion.name !== 'turned 37°' && motion.name !== 'moved far')) {
    const o = move(at(0, 0));
    const turned = ([x, y]: readonly [number, number]): Point => ({ x: move(at(x, y)).x - o.x, y: move(at(x, y)).y - o.y });
    const placed = walls.map((text) => wallOf(text, turned(inward), move));
    const edge = { a: move(EDGE.a), b: move(EDGE.b) };
    const before = measureWalls(edge, turned([0, -1]), placed, limit, depth);
    expect([name, before.distance === null ? null : Math.round(before.distance * 1e6) / 1e6, before.isClosed]).toEqual([
      name,
      distance,
      isClosed,
    ]);
    expect(distanceToWalls(edge, turned([0, -1]), placed, depth)).toBe(before.distance);
    expect(measureWalls({ a: edge.b, b: edge.a }, turned([0, -1]), placed, limit, depth).isClosed).toBe(isClosed);
  }
});

function wallOf(text: string, inward: Point, move: Move): Wall {
  const [a, b] = pathOf(text).map(move) as [Point, Point];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return { id: 'wall', a, b, length, direction: { x: (b.x - a.x) / length, y: (b.y - a.y) / length }, inward };
}
