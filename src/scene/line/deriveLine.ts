import type { Body, Polygon } from '../../geometry';
import type { Settings } from '../../plan';
import type { Inside, Joint, Line, PlacedMachine, PlacedOpening, PlacedTable, PlacedThing } from '../types';
import { deriveWays } from '../ways/deriveWays';
import { deriveConfiguration } from './deriveConfiguration';
import { deriveHand } from './deriveHand';
import { deriveInside } from './deriveInside';
import { deriveStand } from './deriveStand';
import { deriveStations } from './deriveStations';
import { findDropOff } from './findDropOff';

/** A table with its joint to the line's machine. */
export interface TableAtMachine {
  table: PlacedTable;
  joint: Joint;
}

/** The room around a line: what decides where its operator stands and where its ware goes. */
export interface Surroundings {
  outline: Polygon;
  /** What stands on the floor so near that the operator could meet it. */
  obstacles: readonly Body[];
  openings: readonly PlacedOpening[];
  /** Things that hold ware. */
  things: readonly PlacedThing[];
  settings: Settings;
}

/** The line of one machine: what its tables make of it, and where its operator, its stations and its ware are. */
export function deriveLine(machine: PlacedMachine, joined: readonly TableAtMachine[], around: Surroundings): Line {
  const [soiled, clean] = [findTable(joined, 'soiled'), findTable(joined, 'clean')];
  const configuration = deriveConfiguration(joined.map(({ table, joint }) => ({ role: table.table.role, ...joint })));
  const inside = deriveInside(machine, configuration);
  return {
    machine,
    soiled: soiled?.table ?? null,
    clean: clean?.table ?? null,
    configuration,
    hand: inside === null || soiled === null ? null : deriveHand(inside, machine.sides[soiled.joint.side].normal),
    inside,
    stand: inside === null ? null : standAt(machine, inside, around),
    ...deriveChain(machine, soiled?.table ?? null, clean?.table ?? null, around),
  };
}

function standAt(machine: PlacedMachine, inside: Inside, { outline, obstacles, settings }: Surroundings): Line['stand'] {
  return deriveStand(inside, machine.controls, outline, obstacles, settings.personWidth);
}

/** Stations and ways: they share the drop-off and the storage. */
function deriveChain(
  machine: PlacedMachine,
  soiled: PlacedTable | null,
  clean: PlacedTable | null,
  { things, openings, settings: { rackPitch } }: Surroundings,
): Pick<Line, 'stations' | 'ways'> {
  const dropOff = soiled === null ? null : findDropOff(soiled, things, rackPitch);
  const parts = { machine, soiled, clean, dropOff };
  const stations = deriveStations({ things, rackPitch, ...parts });
  return { stations, ways: deriveWays({ openings, storage: stations.at(-1), ...parts }) };
}

/** The joined table of a role; one at a door goes before one at a side without. */
function findTable(joined: readonly TableAtMachine[], role: 'soiled' | 'clean'): TableAtMachine | null {
  const own = joined.filter(({ table }) => table.table.role === role);
  return own.find(({ joint }) => joint.hasDoor) ?? own[0] ?? null;
}
