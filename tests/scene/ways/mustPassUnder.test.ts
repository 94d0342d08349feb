import { expect, test } from 'vitest';
import { createBody, type Polygon } from '../../../src/geometry';
import type { Opening } from '../../../src/plan';
import { mustPassUnder } from '../../../src/scene/ways/mustPassUnder';
import { MOTIONS } from '../../support/motions';
import { at, box, type Corner, type Move, roomOf, solidOf } from '../hall';

/** A corridor 6000 long and 1000 wide; wall 3 is its left end, wall 1 its right end. */
const CORRIDOR: readonly Corner[] = [
  [0, 0],
  [6000, 0],
  [6000, 1000],
  [0, 1000],
];
const AT_LEFT: Partial<Opening> = { wall: '3', from: 50, width: 900 };
const AT_RIGHT: Partial<Opening> = { wall: '1', from: 50, width: 900 };

interface Row {
  name: string;
  hanging: Polygon;
  places: readonly Corner[];
  openings?: readonly Partial<Opening>[];
  standing?: readonly Polygon[];
  width?: number;
  must: boolean;
}

/** Right across the corridor, in its middle. */
const ACROSS = box(2900, 0, 3100, 1000);

const ROWS: Row[] = [
  { name: 'a place below it, although nobody comes that far', hanging: ACROSS, places: [[3000, 500]], openings: [], must: true },
  { name: 'a place at its edge', hanging: ACROSS, places: [[3100, 500]], openings: [], must: true },
  { name: 'a place a millimetre beside its edge, without a door', hanging: ACROSS, places: [[3101, 500]], openings: [], must: false },
  {
    name: 'the second of two places is below it',
    hanging: ACROSS,
    places: [
      [1000, 500],
      [3000, 500],
    ],
    must: true,
  },
  { name: 'it hangs across the way to the place', hanging: ACROSS, places: [[5000, 500]], must: true },
  { name: 'the place is on this side of it', hanging: ACROSS, places: [[1000, 500]], must: false },
  {
    name: 'of two places one is behind it',
    hanging: ACROSS,
    places: [
      [1000, 500],
      [5000, 500],
    ],
    must: true,
  },
  { name: 'no place at all', hanging: ACROSS, places: [], must: false },
  { name: '700 beside it for 700', hanging: box(2900, 0, 3100, 300), places: [[5000, 500]], must: false },
  { name: '699.9 beside it for 700', hanging: box(2900, 0, 3100, 300.1), places: [[5000, 500]], must: true },
  { name: '699.9 beside it for 699.8', hanging: box(2900, 0, 3100, 300.1), places: [[5000, 500]], width: 699.8, must: false },
  {
    name: 'from the door at the other end',
    hanging: ACROSS,
    places: [[5000, 500]],
    openings: [AT_LEFT, AT_RIGHT],
    must: false,
  },
  {
    name: 'what is at the other end is a pass window',
    hanging: ACROSS,
    places: [[5000, 500]],
    openings: [AT_LEFT, { ...AT_RIGHT, kind: 'pass-window' }],
    must: true,
  },
  {
    name: 'one place on either side of it, and a door at either end',
    hanging: ACROSS,
    places: [
      [1000, 500],
      [5000, 500],
    ],
    openings: [AT_LEFT, AT_RIGHT],
    must: false,
  },
  {
    name: 'what stands there leaves no way below it either',
    hanging: ACROSS,
    places: [[5000, 500]],
    standing: [box(2000, 0, 2100, 500)],
    must: false,
  },
  {
    name: 'what stands there leaves a way below it, but none beside it',
    hanging: box(2900, 300, 3100, 1000),
    places: [[5000, 500]],
    standing: [box(2900, 0, 3100, 299)],
    must: true,
  },
  {
    name: 'two places behind what stands there, one of them behind what hangs too, and one behind that alone',
    hanging: ACROSS,
    places: [
      [5000, 500],
      [3500, 500],
    ],
    standing: [box(4000, 0, 4100, 500)],
    must: true,
  },
  {
    name: 'the way counts, not how narrow the place itself is: 40 from a wall',
    hanging: ACROSS,
    places: [[5000, 40]],
    must: true,
  },
];

const isUnder = ({ hanging, places, openings = [AT_LEFT], standing = [], width = 700 }: Row, move: Move) =>
  mustPassUnder(
    { room: roomOf(CORRIDOR, openings, move), solids: standing.map((polygon, i) => solidOf(`body-${i}`, polygon, move)) },
    createBody(hanging.map(move)),
    places.map(([x, y]) => move(at(x, y))),
    width,
  );

test.each(ROWS)('under what hangs too low: $name', (row) => {
  for (const { name, move } of MOTIONS) expect([name, isUnder(row, move)]).toEqual([name, row.must]);
});
