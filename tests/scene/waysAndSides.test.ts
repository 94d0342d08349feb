import { describe, expect, test } from 'vitest';
import type { DataSheet } from '../../src/catalog';
import { FAMILIES } from '../../src/catalog';
import type { Point } from '../../src/geometry';
import type { DropOff } from '../../src/scene/line/findDropOff';
import { deriveRunSolids } from '../../src/scene/place/deriveRunSolids';
import { placeHood } from '../../src/scene/place/placeHood';
import { placeSide } from '../../src/scene/place/placeSide';
import type { PlacedRun } from '../../src/scene/types';
import { deriveWays } from '../../src/scene/ways/deriveWays';
import { at, HALL, lineOf, pathOf, roomOf, rounded, stationOf, tableAt } from './hall';
import { first } from './plans';

// ---------------------------------------------------------------- ways of soiled and clean ware

/** The soiled table from (3000, 2000) 2000 to the left, the clean one from (4000, 2000) 2000 to the right. */
const SOILED = tableAt(3000, 2000, 180);
const CLEAN = tableAt(4000, 2000, 0);
const { machine } = lineOf({});

const onTable = (along: number): DropOff => ({ station: { ...stationOf('drop-off', 'it', at(3000 - along, 2000), 500), racks: 1 }, along });
const cart: DropOff = { station: stationOf('drop-off', 'cart', at(400, 1500)), along: 2000 };

interface WayRow {
  name: string;
  dropOff: DropOff | null;
  openings?: Parameters<typeof roomOf>[1];
  soiled: string;
}

/** A pass window of 800 in the upper wall: its middle 400 from where it begins. */
const windowFrom = (from: number) => ({ kind: 'pass-window' as const, wall: '0', from, width: 800 });

const WAY_ROWS: WayRow[] = [
  { name: 'no drop-off: from the far end', dropOff: null, soiled: '1000 2000, 3000 2000' },
  { name: 'from where it is on the table', dropOff: onTable(1200), soiled: '1800 2000, 3000 2000' },
  { name: 'from the joint', dropOff: onTable(0), soiled: '3000 2000' },
  { name: 'one beyond the end begins at the end', dropOff: onTable(2500), soiled: '1000 2000, 3000 2000' },
  { name: 'from a cart beside the table to its end', dropOff: cart, soiled: '400 1500, 1000 2000, 3000 2000' },
  { name: 'through the window first', dropOff: onTable(1200), openings: [windowFrom(600)], soiled: '1000 0, 1800 2000, 3000 2000' },
  {
    name: 'through the nearer of two, drawn last',
    dropOff: onTable(1200),
    openings: [windowFrom(600), windowFrom(1400)],
    soiled: '1800 0, 1800 2000, 3000 2000',
  },
  {
    name: 'through the nearer of two, drawn first',
    dropOff: onTable(1200),
    openings: [windowFrom(1400), windowFrom(600)],
    soiled: '1800 0, 1800 2000, 3000 2000',
  },
  // From (1800, 2000): √(2236.07² + 2000²) = 3000 at x = 1800 + 2236.07.
  { name: 'a window just within 3 m', dropOff: onTable(1200), openings: [windowFrom(3636)], soiled: '4036 0, 1800 2000, 3000 2000' },
  { name: 'a window farther than 3 m', dropOff: onTable(1200), openings: [windowFrom(3637)], soiled: '1800 2000, 3000 2000' },
  { name: 'a door is no window', dropOff: onTable(1200), openings: [{ wall: '0', from: 600, width: 800 }], soiled: '1800 2000, 3000 2000' },
  { name: 'through the window to a cart', dropOff: cart, openings: [windowFrom(0)], soiled: '400 0, 400 1500, 1000 2000, 3000 2000' },
];

test.each(WAY_ROWS)('the way of soiled ware: $name', ({ dropOff, openings = [], soiled }) => {
  const room = roomOf(HALL, openings);
  const ways = deriveWays({ machine, soiled: SOILED, clean: CLEAN, dropOff, storage: undefined, openings: room.openings });
  expect(rounded(ways.soiled)).toEqual(pathOf(soiled));
});

describe('the way of clean ware', () => {
  const wayTo = (storage: ReturnType<typeof stationOf> | undefined) =>
    rounded(deriveWays({ machine, soiled: SOILED, clean: CLEAN, dropOff: null, storage, openings: [] }).clean);
  test('to the end of its table', () => expect(wayTo(undefined)).toEqual(pathOf('4000 2000, 6000 2000')));
  test('and on to its storage', () =>
    expect(wayTo(stationOf('storage', 'shelf', at(5500, 3000)))).toEqual(pathOf('4000 2000, 6000 2000, 5500 3000')));
  test('not to a storage without a place', () => expect(wayTo(stationOf('storage', null))).toEqual(pathOf('4000 2000, 6000 2000')));
});

test.each([
  { name: 'no soiled table', soiled: null, clean: CLEAN, lengths: [0, 0, 2] },
  { name: 'no clean table', soiled: SOILED, clean: null, lengths: [2, 0, 0] },
  // Free tables are joined to no door: start, rack, start.
  { name: 'both', soiled: SOILED, clean: CLEAN, lengths: [2, 3, 2] },
])('ways: $name', ({ soiled, clean, lengths }) => {
  const ways = deriveWays({ machine, soiled, clean, dropOff: null, storage: undefined, openings: [] });
  expect([ways.soiled.length, ways.rack.length, ways.clean.length]).toEqual(lengths);
});

// ---------------------------------------------------------------- sides of a machine

const SHEET: DataSheet = {
  ...first(FAMILIES),
  width: 700,
  depth: 600,
  rackLine: { left: 250, right: 320, front: 330 },
  doors: ['left', 'front'],
};
const FRAME = { origin: at(1000, 1000), rotationDeg: 0 };

test.each([
  { side: 'left', normal: '-1 0', edge: '1000 1000, 1000 1600', centre: '1000 1300', door: '1000 1250' },
  { side: 'right', normal: '1 0', edge: '1700 1600, 1700 1000', centre: '1700 1300', door: null },
  { side: 'front', normal: '0 1', edge: '1000 1600, 1700 1600', centre: '1350 1600', door: '1330 1600' },
  { side: 'back', normal: '0 -1', edge: '1700 1000, 1000 1000', centre: '1350 1000', door: null },
] as const)('the $side of a machine 700 × 600 at (1000, 1000)', ({ side, normal, edge, centre, door }) => {
  const placed = placeSide(side, SHEET, FRAME, [], 'table');
  expect([placed.side, placed.table, placed.isAgainstWall, placed.wallDistance]).toEqual([side, 'table', false, null]);
  expect(rounded([placed.normal, placed.edge.a, placed.edge.b, placed.centre])).toEqual(pathOf(`${normal}, ${edge}, ${centre}`));
  expect(placed.door && rounded([placed.door])).toEqual(door && pathOf(door));
});

// Half of the machine's width is 350, half of its depth 300: a wall that far behind a side stands before another.
test.each([
  { side: 'left', behind: 349, distance: -349 },
  { side: 'left', behind: 351, distance: null },
  { side: 'right', behind: 349, distance: -349 },
  { side: 'right', behind: 351, distance: null },
  { side: 'front', behind: 299, distance: -299 },
  { side: 'front', behind: 301, distance: null },
  { side: 'back', behind: 299, distance: -299 },
  { side: 'back', behind: 301, distance: null },
] as const)('a wall $behind behind the $side', ({ side, behind, distance }) => {
  const { normal, edge } = placeSide(side, SHEET, FRAME, [], null);
  const back = (p: Point) => at(p.x - normal.x * behind, p.y - normal.y * behind);
  const wall = { id: 'wall', a: back(edge.a), b: back(edge.b), length: 700, direction: at(1, 0), inward: at(-normal.x, -normal.y) };
  const { wallDistance, isAgainstWall } = placeSide(side, SHEET, FRAME, [wall], null);
  expect([wallDistance, isAgainstWall]).toEqual([distance, distance !== null]);
});

// ---------------------------------------------------------------- hoods and runs

test.each([
  { name: 'over its left end by more than 1 mm²', x: -500 + 0.01, covers: true },
  { name: 'by less than that', x: -500 + 0.0005, covers: false },
  { name: 'apart', x: -600, covers: false },
])('a hood of 1000 × 711 over a machine: $name', ({ x, covers }) => {
  const { footprint } = machine;
  const [corner] = footprint as [Point];
  const hood = { id: 'hood', x: corner.x + x, y: corner.y + 355.5, rotationDeg: 0, width: 1000, depth: 711, lipHeight: 2000, height: 400 };
  const placed = placeHood({ ...hood, exhaust: null, cavityAir: null }, [machine]);
  expect(placed.covers.map((cover) => cover.machine)).toEqual(covers ? [machine.machine.id] : []);
});

interface LegRow {
  name: string;
  to: readonly [number, number, number];
  zFrom: number;
  zTo: number;
  corners: string;
}

/** From (0, 0, 2000), 200 wide. */
const LEG_ROWS: LegRow[] = [
  { name: 'up', to: [0, 0, 2600], zFrom: 2000, zTo: 2600, corners: '-100 -100, -100 100, 100 -100, 100 100' },
  { name: 'down', to: [0, 0, 1400], zFrom: 1400, zTo: 2000, corners: '-100 -100, -100 100, 100 -100, 100 100' },
  { name: 'to the right', to: [500, 0, 2000], zFrom: 1900, zTo: 2100, corners: '0 -100, 0 100, 500 -100, 500 100' },
  { name: 'down the paper', to: [0, 500, 2000], zFrom: 1900, zTo: 2100, corners: '-100 0, -100 500, 100 0, 100 500' },
  { name: 'rising flatly', to: [500, 0, 2300], zFrom: 1900, zTo: 2400, corners: '0 -100, 0 100, 500 -100, 500 100' },
  { name: 'falling flatly', to: [500, 0, 1700], zFrom: 1600, zTo: 2100, corners: '0 -100, 0 100, 500 -100, 500 100' },
  { name: 'rising as far as it goes', to: [500, 0, 2500], zFrom: 1900, zTo: 2600, corners: '0 -100, 0 100, 500 -100, 500 100' },
  { name: 'rising steeply', to: [500, 0, 2501], zFrom: 2000, zTo: 2501, corners: '0 -100, 0 100, 500 -100, 500 100' },
];

test.each(LEG_ROWS)('a leg of a run: $name', ({ to: [x, y, z], zFrom, zTo, corners }) => {
  const run = {
    run: { id: 'run', diameter: 200 },
    points: [
      { x: 0, y: 0, z: 2000 },
      { x, y, z },
    ],
  } as unknown as PlacedRun;
  const solids = deriveRunSolids(run);
  expect(solids.map((solid) => [solid.owner, solid.kind, solid.zFrom, solid.zTo])).toEqual([['run', 'run', zFrom, zTo]]);
  const sorted = rounded(first(first(solids).pieces)).toSorted((a, b) => a.x - b.x || a.y - b.y);
  expect(sorted).toEqual(pathOf(corners));
});
