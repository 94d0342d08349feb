import { angleOf, type Point, type Polygon } from '../../src/geometry';
import { createPlan, type Opening, type Table, type Thing } from '../../src/plan';
import { deriveScene } from '../../src/scene/deriveScene';
import { createSolid } from '../../src/scene/place/createSolid';
import { placeThing } from '../../src/scene/place/placeThing';
import { placeRoom } from '../../src/scene/room/placeRoom';
import { placeTable } from '../../src/scene/table/placeTable';
import type { Line, PlacedRoom, PlacedTable, PlacedThing, Solid, SolidKind, Station } from '../../src/scene/types';
import { points } from '../support/motions';
import { first, linePlan, table } from './plans';

/** Rooms, bodies, things and lines small enough to be worked by hand; each takes the motion in which it is drawn. */

export type Corner = readonly [x: number, y: number];
export type Move = (p: Point) => Point;

export const AS_DRAWN: Move = (p) => p;

/** 6000 wide and 4000 deep, with its corner at the origin. */
export const HALL: readonly Corner[] = [
  [0, 0],
  [6000, 0],
  [6000, 4000],
  [0, 4000],
];

export const at = (x: number, y: number): Point => ({ x, y });

/** Places from words: `x y, x y`. */
export const pathOf = (text: string): Point[] =>
  text === '' ? [] : text.split(', ').map((place) => at(...(place.split(' ').map(Number) as [number, number])));

export const box = (x0: number, y0: number, x1: number, y1: number): Polygon => points([x0, y0], [x1, y0], [x1, y1], [x0, y1]);

/** A room through these corners; each wall has the number of the corner where it begins. */
export function roomOf(corners: readonly Corner[], openings: readonly Partial<Opening>[] = [], move: Move = AS_DRAWN): PlacedRoom {
  return placeRoom({
    ...createPlan().room,
    outline: corners.map(([x, y], i) => ({ id: `${i}`, ...move({ x, y }) })),
    openings: openings.map((opening, i) => ({ ...DOOR, id: `opening-${i}`, ...opening })),
  });
}

/** A doorway of 900 without a leaf. */
const DOOR: Opening = {
  id: 'opening',
  kind: 'cased-opening',
  wall: '0',
  from: 1000,
  width: 900,
  height: 2032,
  sill: 0,
  swing: 'none',
  hinge: 'start',
};

/** A thing about its centre; at rotation 0 its front looks down the paper. */
export function thingOf(
  x: number,
  y: number,
  width: number,
  depth: number,
  change: Partial<Thing> = {},
  move: Move = AS_DRAWN,
): PlacedThing {
  const { rotationDeg = 0, ...rest } = change;
  return placeThing({ ...THING, ...move({ x, y }), width, depth, rotationDeg: turnedDeg(rotationDeg, move), ...rest }, 0);
}

const THING: Thing = {
  id: 'thing',
  kind: 'cart',
  name: '',
  x: 0,
  y: 0,
  rotationDeg: 0,
  width: 600,
  depth: 400,
  height: 900,
  ware: 'none',
  clearBelow: null,
  sealed: null,
  basins: null,
};

/** An angle as it is drawn after a motion. */
function turnedDeg(deg: number, move: Move): number {
  const [from, to] = [move({ x: 0, y: 0 }), move({ x: Math.cos((deg * Math.PI) / 180), y: Math.sin((deg * Math.PI) / 180) })];
  const isMirror = isMirrorImage(move);
  // A mirrored body has its front, not its right side, where the mirror shows it.
  const drawn = Math.round(angleOf({ x: to.x - from.x, y: to.y - from.y }) * 1e6) / 1e6;
  return isMirror ? drawn + 180 : drawn;
}

function isMirrorImage(move: Move): boolean {
  const [o, x, y] = [move({ x: 0, y: 0 }), move({ x: 1, y: 0 }), move({ x: 0, y: 1 })];
  return (x.x - o.x) * (y.y - o.y) - (x.y - o.y) * (y.x - o.x) < 0;
}

/** A table free in the room, 762 deep with its rack line 273 from its operator's edge. */
export function tableAt(x: number, y: number, headingDeg: number, change: Partial<Table> = {}): PlacedTable {
  const placed = placeTable(table({ place: { kind: 'free', x, y, headingDeg }, ...change }), null, null);
  if (placed === null) throw new Error('a free table has a place');
  return placed;
}

/** A body that stands on the floor, or hangs from a height. */
export const solidOf = (owner: string, polygon: Polygon, move: Move = AS_DRAWN, zFrom = 0, kind: SolidKind = 'thing'): Solid =>
  createSolid({ owner, kind, pieces: [polygon.map(move)], zFrom, zTo: zFrom + 900 });

/** A line of which only these parts are told. */
export const lineOf = (parts: Partial<Line>): Line => ({
  machine: MACHINE,
  soiled: null,
  clean: null,
  configuration: { kind: 'none', reason: 'no-table' },
  hand: null,
  inside: null,
  stand: null,
  stations: [],
  ways: { soiled: [], rack: [], clean: [] },
  ...parts,
});

const MACHINE = first(deriveScene(linePlan()).machines);

export const stationOf = (
  kind: Station['kind'],
  subject: string | null,
  place: Point | null = null,
  length: number | null = null,
): Station => ({
  kind,
  subject,
  place,
  length,
  racks: null,
});

/** Points to the thousandth of a millimetre, for `toEqual`; -0 is 0. */
export const rounded = (polygon: Polygon): Point[] =>
  polygon.map(({ x, y }) => ({ x: Math.round(x * 1000) / 1000 + 0, y: Math.round(y * 1000) / 1000 + 0 }));
