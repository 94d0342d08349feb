import { type Point, toWorld } from '../../geometry';
import { findThingNear } from '../place/findThingNear';
import { measureLanding } from '../table/measureLanding';
import type { PlacedFitting, PlacedMachine, PlacedTable, PlacedThing, Station, StationKind } from '../types';
import type { DropOff } from './findDropOff';

/** What the stations of a line are found in. */
export interface LineParts {
  machine: PlacedMachine;
  soiled: PlacedTable | null;
  clean: PlacedTable | null;
  dropOff: DropOff | null;
  things: readonly PlacedThing[];
  rackPitch: number;
}

/** The seven stations in the order of the line; one that the line lacks has no subject. */
export function deriveStations({ machine, soiled, clean, dropOff, things, rackPitch }: LineParts): Station[] {
  return [
    dropOff?.station ?? absent('drop-off'),
    stationOf('scrap', soiled, ({ fitting }) => fitting.kind === 'scrap'),
    stationOf('pre-rinse', soiled, ({ fitting }) => fitting.kind === 'sink' && fitting.spray),
    measureLanding('soiled-landing', soiled, rackPitch),
    { kind: 'machine', subject: machine.machine.id, place: rackCentreOf(machine), length: null, racks: 1 },
    measureLanding('clean-landing', clean, rackPitch),
    findStorage(clean, things),
  ];
}

/** Where the rack stands in the machine: the rack centre lines of the front and of the sides meet there. */
export function rackCentreOf({ sheet: { rackLine }, frame }: PlacedMachine): Point {
  return toWorld(frame, { x: rackLine.front, y: (rackLine.left + rackLine.right) / 2 });
}

const absent = (kind: StationKind): Station => ({ kind, subject: null, place: null, length: null, racks: null });

function stationOf(kind: StationKind, table: PlacedTable | null, isIt: (fitting: PlacedFitting) => boolean): Station {
  const found = table?.fittings.find(isIt);
  if (found === undefined) return absent(kind);
  return { kind, subject: found.fitting.id, place: found.centre, length: found.fitting.length, racks: null };
}

function findStorage(clean: PlacedTable | null, things: readonly PlacedThing[]): Station {
  const found = findThingNear(clean?.path.at(-1), things, 'clean');
  if (found === null) return absent('storage');
  const { id, x, y } = found.thing;
  return { kind: 'storage', subject: id, place: { x, y }, length: null, racks: null };
}
