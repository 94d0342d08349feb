import { along, type Body, createBody, createPassageSearch, distance, MOST_PLACES, type Passage, type Point } from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import { openWideBay } from '../room/doorway';
import type { FloorObstacle, Line, PlacedOpening, PlacedRoom, PlacedThing, Scene, Solid, Station, StationKind } from '../types';
import { findWidestWay } from './findWidestWay';
import { floorBodies, floorObstacles } from './floorObstacles';
import { type RolledOut, rollOut } from './rollOut';
import { createFloor, type Floor, standAtTable, standAtThing } from './standBefore';

/** The way of people to one place of work: from a door or from an operator's place, whichever is wider. */
export interface StationWay {
  kind: StationKind | 'hand-sink';
  /** What serves as the station: id of the fitting, table or thing. */
  subject: string;
  /** Where a person stands who works there. */
  stand: Point;
  /** The way at its narrowest; wider than `enough` counts as `enough`. */
  passage: Passage;
  /** The same while every cart is rolled out that can be; null where none can, or where the place itself is a cart. */
  besideCarts: Passage | null;
}

/** Stations that people walk to. The operator's place has a search of its own, and the soiled landing lies before it. */
const WALKED_TO: readonly StationKind[] = ['drop-off', 'pre-rinse', 'clean-landing', 'storage'];

/**
 * The widest way to each station and to each hand sink of the room, past the leaves of doors that stand open into it; null where
 * the room has no door. Whoever is at the machine has come in, so a way from there counts as well: how wide the way in is, is
 * `findWidestWay`. Where a person has the room to stand (`pass`), the place itself makes no way narrower. Ways wider than `enough`
 * are not told apart.
 */
export const findStationWays = (
  { solids, lines, things, room }: Pick<Scene, 'solids' | 'lines' | 'things' | 'room'>,
  { enough, pass }: { enough: number; pass: number },
): StationWay[] | null => remembered(solids, lines, things, room, enough, pass);

type Place = Pick<StationWay, 'kind' | 'subject' | 'stand'> & { isCart: boolean };

const remembered = memoizeByIdentity(
  (solids: Solid[], lines: Line[], things: PlacedThing[], room: PlacedRoom, enough: number, person: number): StationWay[] | null => {
    if (!room.openings.some(({ isWay }) => isWay)) return null;
    const obstacles = floorObstacles({ solids });
    const places = listPlaces(lines, things, createFloor(room.outline, floorBodies({ solids })), enough);
    const carts = things.filter(({ thing }) => thing.kind === 'cart');
    const operators = lines
      .map((line) => findWidestWay({ room, solids }, line, enough)?.to)
      .filter((to) => to !== undefined)
      .slice(0, OPERATORS);
    const standing = { parked: obstacles, rolledOut: rollOut(carts, obstacles, room) };
    const found = searchDoors(room, standing, operators, places, { enough, person });
    return places.map(({ kind, subject, stand }, i) => ({ kind, subject, stand, ...(found[i] ?? NOT_FOUND) }));
  },
);

// ---------------------------------------------------------------- the places

function listPlaces(lines: readonly Line[], things: readonly PlacedThing[], floor: Floor, enough: number): Place[] {
  const sinks = things.filter(({ thing }) => thing.kind === 'hand-sink').map((thing) => placeOf('hand-sink', thing, floor, enough));
  const stations = lines.flatMap((line) => WALKED_TO.flatMap((kind) => stationPlace(line, kind, things, floor, enough)));
  const isFirst = (place: Place, i: number) =>
    stations.findIndex(({ subject, kind }) => subject === place.subject && kind === place.kind) === i;
  return [...stations.filter(isFirst), ...sinks];
}

function stationPlace(line: Line, kind: StationKind, things: readonly PlacedThing[], floor: Floor, enough: number): Place[] {
  const station = stationOf(line, kind);
  if (station === undefined || station.subject === null) return [];
  const thing = things.find((item) => item.thing.id === station.subject);
  if (thing !== undefined) return [placeOf(kind, thing, floor, enough)];
  const table = kind === 'clean-landing' ? line.clean : line.soiled;
  const stand = table === null ? null : standAtTable(floor, table, station, enough);
  return stand === null ? [] : [{ kind, subject: station.subject, stand, isCart: false }];
}

/** Without a pre-rinse it is the scrap opening where ware is cleared. */
function stationOf({ stations }: Line, kind: StationKind): Station | undefined {
  const found = stations.find((station) => station.kind === kind);
  return kind === 'pre-rinse' && found?.subject === null ? stations.find((station) => station.kind === 'scrap') : found;
}

const placeOf = (kind: Place['kind'], placed: PlacedThing, floor: Floor, enough: number): Place => ({
  kind,
  subject: placed.thing.id,
  stand: standAtThing(floor, placed, enough),
  isCart: placed.thing.kind === 'cart',
});

// ---------------------------------------------------------------- the search

const CLOSED: Passage = { width: 0, pinch: null };
const NOT_FOUND: Found = { passage: CLOSED, besideCarts: null };

/** So many operators are asked, and so many places fit into one search beside them and a door. */
const OPERATORS = 10;
const AT_ONCE = MOST_PLACES - OPERATORS - 1;

/** Ways from `enough` on are not told apart; a person stands in `person`. */
interface Widths {
  enough: number;
  person: number;
}

/** What stands on the floor: everything in its place, and the carts before theirs. */
interface Standing {
  parked: readonly FloorObstacle[];
  rolledOut: readonly RolledOut[];
}

type Found = Pick<StationWay, 'passage' | 'besideCarts'>;

/** Door after door, until every place has a way that is wide enough. */
function searchDoors(room: PlacedRoom, standing: Standing, operators: readonly Point[], places: readonly Place[], widths: Widths): Found[] {
  const best: Found[] = places.map(() => NOT_FOUND);
  const isNarrow = ({ passage, besideCarts }: Found) => Math.min(passage.width, besideCarts?.width ?? widths.enough) < widths.enough - 1e-6;
  for (const door of room.openings.filter(({ isWay }) => isWay)) {
    const open = best.flatMap((found, i) => (isNarrow(found) ? [i] : []));
    for (let from = 0; from < open.length; from += AT_ONCE) {
      const now = open.slice(from, from + AT_ONCE);
      const found = searchDoor(
        room,
        door,
        standing,
        operators,
        now.map((i) => places[i] as Place),
        widths,
      );
      for (const [k, i] of now.entries()) best[i] = widerOf(best[i] as Found, found[k] as Found);
    }
  }
  return best;
}

const widerOf = (one: Found, other: Found): Found => ({
  passage: other.passage.width > one.passage.width ? other.passage : one.passage,
  besideCarts: (other.besideCarts?.width ?? -1) > (one.besideCarts?.width ?? -1) ? other.besideCarts : one.besideCarts,
});

/** From a bay behind the door, as wide as is wanted: how wide the door itself is, is another question. */
function searchDoor(
  room: PlacedRoom,
  door: PlacedOpening,
  { parked, rolledOut }: Standing,
  operators: readonly Point[],
  places: readonly Place[],
  { enough, person }: Widths,
): Found[] {
  const { outline, from } = openWideBay(door, room, enough);
  const leaves = room.openings.flatMap((opening) => openLeaves(opening, opening === door ? enough : 0));
  const fixed = [...parked.map(({ body }) => body), ...leaves];
  const search = createPassageSearch(outline, [...fixed, ...rolledOut.map(({ body }) => body)], enough);
  const starts = [from, ...operators];
  const points = [...starts, ...places.map(({ stand }) => stand)];
  const widest = (passage: (i: number, j: number) => Passage, to: number) =>
    cap(
      starts.map((_, i) => passage(i, starts.length + to)).reduce((best, item) => (item.width > best.width ? item : best)),
      enough,
    );
  const plain = search.solve(points, (i) => i < fixed.length, person);
  const isAway = new Set(rolledOut.map(({ owner }) => owner));
  const past = rolledOut.length === 0 ? null : search.solve(points, (i) => !isAway.has(parked[i]?.owner ?? ''), person);
  return places.map(({ isCart }, i) => ({
    passage: widest(plain, i),
    besideCarts: past === null || isCart ? null : widest(past, i),
  }));
}

const cap = (passage: Passage, enough: number): Passage => (passage.width >= enough ? { width: enough, pinch: passage.pinch } : passage);

/** The leaves of a door as they stand open, square to the wall; moved aside with the jambs where the bay is wider than the door. */
const openLeaves = memoizeByIdentity(({ sweep, segment, centre, wall }: PlacedOpening, bay: number): Body[] => {
  const aside = Math.max(0, (bay - distance(segment.a, segment.b)) / 2);
  return sweep.flatMap(([hinge, ...arc]) => {
    const tip = arc.at(-1);
    if (hinge === undefined || tip === undefined) return [];
    const away = (hinge.x - centre.x) * wall.direction.x + (hinge.y - centre.y) * wall.direction.y > 0 ? aside : -aside;
    return [createBody([along(hinge, wall.direction, away), along(tip, wall.direction, away)])];
  });
});
