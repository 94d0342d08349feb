import { pointAt } from '../../geometry';
import { findThingNear } from '../place/findThingNear';
import { countRacks, isHole } from '../table/measureLanding';
import type { PlacedTable, PlacedThing, Station } from '../types';

/** The drop-off, and how far along the soiled table ware from it begins its way. */
export interface DropOff {
  station: Station;
  along: number;
}

/**
 * Where soiled ware is set down: the fitting drawn for it; else the table's far end beyond its last
 * sink or scrap opening, if a rack fits there; else a thing for soiled ware near that end.
 */
export function findDropOff(soiled: PlacedTable, things: readonly PlacedThing[], rackPitch: number): DropOff | null {
  return findFitting(soiled, rackPitch) ?? findFarEnd(soiled, rackPitch) ?? findThing(soiled, things);
}

function findFitting({ fittings }: PlacedTable, rackPitch: number): DropOff | null {
  const found = fittings.find(({ fitting }) => fitting.kind === 'drop-off');
  if (found === undefined) return null;
  const { id, at, length } = found.fitting;
  return { station: { kind: 'drop-off', subject: id, place: found.centre, length, racks: countRacks(length, rackPitch) }, along: at };
}

function findFarEnd({ table, fittings, length, path }: PlacedTable, rackPitch: number): DropOff | null {
  const holes = fittings.filter(isHole);
  const from = Math.max(...holes.map(({ to }) => to));
  const racks = countRacks(length - from, rackPitch);
  if (holes.length === 0 || racks < 1) return null;
  const along = (from + length) / 2;
  return { station: { kind: 'drop-off', subject: table.id, place: pointAt(path, along).point, length: length - from, racks }, along };
}

function findThing({ path, length }: PlacedTable, things: readonly PlacedThing[]): DropOff | null {
  const thing = findThingNear(path.at(-1), things, 'soiled');
  if (thing === null) return null;
  const place = { x: thing.thing.x, y: thing.thing.y };
  return { station: { kind: 'drop-off', subject: thing.thing.id, place, length: null, racks: null }, along: length };
}
