import { describe, expect, test } from 'vitest';
import { createBody, type Polygon } from '../../../src/geometry';
import type { Table, Thing } from '../../../src/plan';
import { clearanceAt, createFloor, standAtTable, standAtThing } from '../../../src/scene/ways/standBefore';
import { MOTIONS } from '../../support/motions';
import { at, box, type Corner, HALL, type Move, roomOf, rounded, stationOf, tableAt, thingOf } from '../hall';
import { near } from '../plans';

const floorOf = (bodies: readonly Polygon[], move: Move = (p) => p, corners: readonly Corner[] = HALL) =>
  createFloor(
    roomOf(corners, [], move).outline,
    bodies.map((body) => createBody(body.map(move))),
  );

// ---------------------------------------------------------------- clearance

interface ClearanceRow {
  name: string;
  bodies: readonly Polygon[];
  p: [number, number];
  clearance: number;
}

const POST = box(2900, 1900, 3100, 2100);

test.each([
  { name: 'the nearest wall', bodies: [], p: [500, 1200], clearance: 500 },
  { name: 'the nearest of two bodies, the first', bodies: [POST, box(0, 3500, 6000, 4000)], p: [2600, 2000], clearance: 300 },
  { name: 'the nearest of two bodies, the second', bodies: [box(0, 3500, 6000, 4000), POST], p: [2600, 2000], clearance: 300 },
  { name: 'a corner: 300 and 400 from it', bodies: [POST], p: [2600, 1500], clearance: 500 },
  { name: 'a wall nearer than a body', bodies: [POST], p: [2600, 100], clearance: 100 },
  { name: 'in a body', bodies: [POST], p: [3000, 2000], clearance: 0 },
  { name: 'on the edge of a body', bodies: [POST], p: [2900, 2000], clearance: 0 },
  { name: 'half a millimetre from a body', bodies: [POST], p: [2899.5, 2000], clearance: 0.5 },
  { name: 'on a wall', bodies: [], p: [0, 2000], clearance: 0 },
  { name: 'outside the room', bodies: [], p: [-500, 2000], clearance: 0 },
  { name: 'in the second body, after one that is near', bodies: [box(2400, 1900, 2500, 2100), POST], p: [3000, 2000], clearance: 0 },
  {
    name: 'turned: the box about a body is nearer than the body',
    bodies: [[at(3000, 1000), at(4000, 2000), at(3000, 3000), at(2000, 2000)]],
    p: [2100, 1100],
    clearance: 800 * Math.SQRT1_2,
  },
] satisfies ClearanceRow[])('clearance: $name', ({ bodies, p, clearance }) => {
  for (const { name, move } of MOTIONS) expect([name, clearanceAt(floorOf(bodies, move), move(at(...p)))]).toEqual([name, near(clearance)]);
});

// ---------------------------------------------------------------- before a thing

interface ThingRow {
  name: string;
  kind?: Thing['kind'];
  rotationDeg?: number;
  place?: Corner;
  bodies?: readonly Polygon[];
  wanted?: number;
  stand: Corner;
}

/** 600 wide and 400 deep about (3000, 1000): its front at y = 1200, its back at 800, its sides at 2700 and 3300. */
const OWN = box(2700, 800, 3300, 1200);

/** What takes one of its sides, as far as the wall. */
const FRONT = box(2700, 1200, 3300, 4000);
const BACK = box(2700, 0, 3300, 800);
const LEFT = box(0, 800, 2700, 1200);

const THING_ROWS: ThingRow[] = [
  { name: 'half of what is wanted before its front', stand: [3000, 1700] },
  { name: 'turned by 90° its front looks left', rotationDeg: 90, bodies: [box(2800, 700, 3200, 1300)], stand: [2300, 1000] },
  { name: 'turned by 180° its front looks up', rotationDeg: 180, wanted: 600, stand: [3000, 500] },
  { name: 'between its front and a shelf 600 before it', bodies: [OWN, box(0, 1800, 6000, 2200)], stand: [3000, 1500] },
  { name: 'a shelf just as far as is wanted', bodies: [OWN, box(0, 2200, 6000, 2600)], stand: [3000, 1700] },
  { name: 'what juts out by 100 all along puts the place farther out by 100', bodies: [OWN, box(0, 800, 6000, 1300)], stand: [3000, 1800] },
  // At 1700 a corner is 100 aside and 400 behind: 412.31. Farther out by the 87.69 that lack: 1787.69, and 497.9 from the corner.
  { name: 'a corner that juts out beside the way', bodies: [OWN, box(2000, 800, 2900, 1300)], stand: [3000, 1787.689] },
  { name: 'nothing is free: what stands right before its front', bodies: [OWN, box(0, 1200, 6000, 4000)], stand: [3000, 1700] },
  {
    name: 'a hand sink has one side, though there are only 100 before it',
    kind: 'hand-sink',
    bodies: [OWN, box(0, 1300, 6000, 4000)],
    stand: [3000, 1250],
  },
  { name: 'shelving the same', kind: 'shelving', bodies: [OWN, box(0, 1300, 6000, 4000)], stand: [3000, 1250] },
  { name: 'a cart with its front taken: behind it', kind: 'cart', wanted: 700, bodies: [OWN, FRONT], stand: [3000, 450] },
  {
    name: 'a cart with its front and back taken: first at the left of its picture',
    kind: 'cart',
    bodies: [OWN, FRONT, BACK],
    stand: [2200, 1000],
  },
  { name: 'a cart with only its right side free', kind: 'cart', bodies: [OWN, FRONT, BACK, LEFT], stand: [3800, 1000] },
  { name: 'a work table the same', kind: 'work-table', bodies: [OWN, FRONT, BACK, LEFT], stand: [3800, 1000] },
  // Nowhere are 1000: 300 between at the front, 400 at the back, 440 at the left, 420 at the right.
  {
    name: 'a cart that has too little room on every side: the roomiest, which is the third',
    kind: 'cart',
    bodies: [OWN, box(0, 1500, 6000, 2600), box(0, 0, 6000, 400), box(0, 400, 2260, 1500), box(3720, 400, 6000, 1500)],
    stand: [2480, 1000],
  },
  {
    name: 'of equals the first',
    kind: 'cart',
    bodies: [OWN, box(0, 1600, 6000, 2700), box(0, 0, 6000, 400), box(0, 400, 2300, 1600), box(3700, 400, 6000, 1600)],
    stand: [3000, 1400],
  },
];

test.each(THING_ROWS)('before a thing: $name', ({ kind = 'bin', rotationDeg = 0, bodies = [OWN], wanted = 1000, stand }) => {
  const found = (move: Move) => standAtThing(floorOf(bodies, move), thingOf(3000, 1000, 600, 400, { kind, rotationDeg }, move), wanted);
  expect(rounded([found((p) => p)])).toEqual([at(...stand)]);
  // In a mirror right is left, so that a cart's sides are tried in the other order: turned only.
  for (const { name, move } of MOTIONS.filter(({ isMirror }) => !isMirror)) {
    const [place, to] = [found(move), move(at(...stand))];
    expect([name, Math.hypot(place.x - to.x, place.y - to.y)]).toEqual([name, near(0, 2)]);
  }
});

// ---------------------------------------------------------------- before a table

interface TableRow {
  name: string;
  table?: Partial<Table>;
  headingDeg?: number;
  /** Middle of the station and its length; null where it has no place. */
  station: { place: Corner; length: number | null } | null;
  bodies?: readonly Polygon[];
  stand: Corner | null;
}

/** From (2000, 2000) 2000 to the right; its rack line is 273 from the operator’s edge, which is below at y = 2273. */
const TABLE = box(2000, 1511, 4000, 2273);
const before = (x: number) => box(x - 100, 2273, x + 100, 4000);

const TABLE_ROWS: TableRow[] = [
  {
    name: 'before the middle of the station, half of what is wanted out',
    station: { place: [2800, 2000], length: 500 },
    stand: [2800, 2773],
  },
  { name: 'a station without a place', station: null, stand: null },
  {
    name: 'an operator at the left of the way works from above',
    table: { operatorSide: 'left' },
    bodies: [box(2000, 1727, 4000, 2489)],
    station: { place: [2800, 2000], length: 500 },
    stand: [2800, 1227],
  },
  {
    name: 'a place beside the rack line counts as its foot',
    station: { place: [2800, 2150], length: 500 },
    stand: [2800, 2773],
  },
  {
    name: 'the middle is taken: a quarter of its length toward the joint',
    station: { place: [2800, 2000], length: 2400 },
    bodies: [TABLE, before(2800)],
    stand: [2200, 2773],
  },
  {
    name: 'the middle and the place toward the joint are taken: a quarter outward',
    station: { place: [3000, 2000], length: 2400 },
    bodies: [TABLE, before(3000), before(2400)],
    stand: [3600, 2773],
  },
  {
    name: 'a quarter short of the joint is the joint',
    station: { place: [2300, 2000], length: 2400 },
    bodies: [TABLE, before(2600)],
    // At the middle (2300) the body is 200 off; at the joint 500.
    stand: [2000, 2773],
  },
  {
    name: 'a quarter beyond the end is the end',
    station: { place: [3500, 2000], length: 2400 },
    bodies: [TABLE, box(2500, 2273, 3500, 4000)],
    stand: [4000, 2773],
  },
  {
    name: 'without a length there is no other place: the body keeps 200 off',
    station: { place: [2800, 2000], length: null },
    bodies: [TABLE, box(3000, 2273, 3200, 4000)],
    stand: [2800, 2773],
  },
  {
    name: 'around the corner of an L it is the second leg that is worked at',
    table: {
      legs: [
        { length: 1000, turnDeg: 0 },
        { length: 1000, turnDeg: 90 },
      ],
    },
    bodies: [],
    station: { place: [3000, 2600], length: 200 },
    // The second leg runs down the paper from (3000, 2000); to its right is left on the paper.
    stand: [2227, 2600],
  },
];

test.each(TABLE_ROWS)('before a table: $name', ({ table, station, bodies = [TABLE], stand }) => {
  const placed = tableAt(2000, 2000, 0, table);
  const item = stationOf('drop-off', 'it', station && at(...station.place), station?.length ?? null);
  const found = standAtTable(floorOf(bodies), placed, item, 1000);
  expect(found && rounded([found])).toEqual(stand && [at(...stand)]);
});

describe('a table in the room as it is turned', () => {
  test.each([0, 90, 180, 270, 37])('by %d°', (rotateDeg) => {
    const turn = MOTIONS.find(({ name }) => name === `turned ${rotateDeg}°`)?.move ?? at;
    const move = turn as Move;
    const start = move(at(2000, 2000));
    const placed = tableAt(start.x, start.y, rotateDeg);
    const item = stationOf('drop-off', 'it', move(at(2800, 2000)), 2400);
    const found = standAtTable(floorOf([TABLE, before(2800)], move), placed, item, 1000);
    expect(found && rounded([found])).toEqual(rounded([move(at(2200, 2773))]));
  });
});
