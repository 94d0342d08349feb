import { distance, isNear, type Point, slicePath } from '../../geometry';
import { rackCentreOf } from '../line/deriveStations';
import type { DropOff } from '../line/findDropOff';
import type { Line, PlacedMachine, PlacedOpening, PlacedTable, Station } from '../types';

/** What the ways of a line go through. */
export interface WayParts {
  machine: PlacedMachine;
  soiled: PlacedTable | null;
  clean: PlacedTable | null;
  dropOff: DropOff | null;
  storage: Station | undefined;
  openings: readonly PlacedOpening[];
}

/** Soiled ware to the machine, racks through it, clean ware away from it; each in the direction of travel. */
export function deriveWays(parts: WayParts): Line['ways'] {
  const { machine, soiled, clean, storage } = parts;
  return {
    soiled: soiled === null ? [] : deriveSoiledWay(soiled, parts),
    rack: soiled === null || clean === null ? [] : deriveRackWay(machine, soiled, clean),
    clean: clean === null ? [] : [...clean.path, ...(storage?.place ? [storage.place] : [])],
  };
}

/** From the pass window that it is handed through, or from the drop-off itself, along the table to the joint. */
function deriveSoiledWay(table: PlacedTable, { dropOff, openings }: WayParts): Point[] {
  const along = Math.min(table.length, dropOff?.along ?? table.length);
  const onTable = along > 0 ? slicePath(table.path, 0, along).reverse() : table.path.slice(0, 1);
  const place = dropOff?.station.place;
  if (!place) return onTable;
  const isBesideTable = dropOff.station.length === null;
  return [...findWindow(place, openings), ...(isBesideTable ? [place] : []), ...onTable];
}

/** A window farther from the drop-off than this serves something else: about four steps. */
const WINDOW_REACH = 3000;

function findWindow(dropOff: Point, openings: readonly PlacedOpening[]): Point[] {
  return openings
    .filter(({ opening, centre }) => opening.kind === 'pass-window' && distance(centre, dropOff) <= WINDOW_REACH)
    .map(({ centre }) => centre)
    .sort((a, b) => distance(a, dropOff) - distance(b, dropOff))
    .slice(0, 1);
}

/** Joint, door, rack place, door, joint; a flush table begins at the door. */
function deriveRackWay(machine: PlacedMachine, soiled: PlacedTable, clean: PlacedTable): Point[] {
  return [...enterBy(soiled, machine), rackCentreOf(machine), ...enterBy(clean, machine).reverse()];
}

function enterBy({ table, path }: PlacedTable, machine: PlacedMachine): Point[] {
  const start = path[0];
  const door = table.place.kind === 'joined' ? machine.sides[table.place.side].door : null;
  if (start === undefined) return [];
  return door === null || isNear(door, start) ? [start] : [start, door];
}
