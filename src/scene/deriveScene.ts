import type { DataSheet } from '../catalog';
import { type Hood, type Machine, type Plan, type Run, resolveDataSheet, type Table, type Thing } from '../plan';
import { deriveLines } from './line/deriveLines';
import { memoizeByIdentity } from './memoizeByIdentity';
import { deriveMarks } from './place/deriveMarks';
import { deriveRunSolids } from './place/deriveRunSolids';
import { deriveColumnSolids, deriveHoodSolids, deriveMachineSolids } from './place/deriveSolids';
import { placeHood } from './place/placeHood';
import { placeMachine, type TableAtSide } from './place/placeMachine';
import { placeRun } from './place/placeRun';
import { deriveThingSolid, placeThing } from './place/placeThing';
import { placeRoom } from './room/placeRoom';
import { deriveTableSolids } from './table/deriveTableSolids';
import { measureJoints } from './table/measureJoint';
import { placeTable } from './table/placeTable';
import type { PlacedHood, PlacedMachine, PlacedRoom, PlacedRun, PlacedTable, PlacedThing, Scene, Solid } from './types';

/**
 * The plan worked out in space. Each stage is remembered by the identity of what it takes, and an edit keeps the identity of what
 * it does not change, so after it only the changed thing and what depends on it are worked out again.
 */
export const deriveScene = memoizeByIdentity((plan: Plan): Scene => {
  const room = placeRoom(plan.room);
  const hosts = findHosts(plan.machines, plan.sheets);
  const machines = placeMachines(hosts, plan.tables, room);
  const tables = placeTables(plan.tables, hosts);
  const things = placeThings(plan.things);
  const hoods = placeHoods(plan.hoods, machines);
  const runs = placeRuns(plan.runs, machines);
  const joints = measureJoints(tables, machines);
  const solids = deriveSolids(machines, tables, things, hoods, runs, room);
  const lines = deriveLines(machines, tables, room, things, solids, plan.settings);
  const marks = deriveMarks({ lines, tables, hoods, runs, things });
  return { plan, room, machines, tables, things, hoods, runs, joints, lines, solids, marks };
});

/** A machine of the plan with its data sheet. */
interface Host {
  machine: Machine;
  sheet: DataSheet;
}

const findHosts = memoizeByIdentity((machines: readonly Machine[], sheets: Plan['sheets']): readonly Host[] =>
  machines.map((machine) => ({ machine, sheet: resolveDataSheet({ sheets }, machine) })),
);

const placeMachines = memoizeByIdentity((hosts: readonly Host[], tables: readonly Table[], room: PlacedRoom): PlacedMachine[] =>
  hosts.map(({ machine, sheet }, at) => placeMachine(machine, sheet, at, room.walls, tablesAt(machine, tables))),
);

const tablesAt = (machine: Machine, tables: readonly Table[]): TableAtSide => {
  const joinedAt = (side: string) =>
    tables.find(({ place }) => place.kind === 'joined' && place.machine === machine.id && place.side === side)?.id ?? null;
  return tablesAtSides(machine, joinedAt('left'), joinedAt('right'), joinedAt('front'), joinedAt('back'));
};

type Id = string | null;

const tablesAtSides = memoizeByIdentity(
  (_of: Machine, left: Id, right: Id, front: Id, back: Id): TableAtSide => ({ left, right, front, back }),
);

const placeTables = memoizeByIdentity((tables: readonly Table[], hosts: readonly Host[]): PlacedTable[] =>
  tables.flatMap((table) => {
    const { place } = table;
    const host = place.kind === 'joined' ? hosts.find(({ machine }) => machine.id === place.machine) : undefined;
    return placeTable(table, host?.machine ?? null, host?.sheet ?? null) ?? [];
  }),
);

const placeThings = memoizeByIdentity((things: readonly Thing[]): PlacedThing[] => things.map((thing, at) => placeThing(thing, at)));

const placeHoods = memoizeByIdentity((hoods: readonly Hood[], machines: readonly PlacedMachine[]): PlacedHood[] =>
  hoods.map((hood) => placeHood(hood, machines)),
);

const placeRuns = memoizeByIdentity((runs: readonly Run[], machines: readonly PlacedMachine[]): PlacedRun[] =>
  runs.map((run) => placeRun(run, machines.find(({ machine }) => machine.id === run.machine) ?? null)),
);

const deriveSolids = memoizeByIdentity(
  (
    machines: readonly PlacedMachine[],
    tables: readonly PlacedTable[],
    things: readonly PlacedThing[],
    hoods: readonly PlacedHood[],
    runs: readonly PlacedRun[],
    room: PlacedRoom,
  ): Solid[] => [
    ...machines.flatMap((placed) => deriveMachineSolids(placed)),
    ...tables.flatMap((table) => deriveTableSolids(table, trackHeight(table, machines))),
    ...things.map((placed) => deriveThingSolid(placed)),
    ...hoods.flatMap((placed) => deriveHoodSolids(placed)),
    ...runs.flatMap((placed) => deriveRunSolids(placed)),
    ...deriveColumnSolids(room),
  ],
);

/** Height of tables where none is known: 34 in, common practice. */
const USUAL_DECK_HEIGHT = 863.6;

const trackHeight = ({ machine }: PlacedTable, machines: readonly PlacedMachine[]) =>
  machines.find((host) => host.machine.id === machine)?.sheet.deckHeight ?? USUAL_DECK_HEIGHT;
