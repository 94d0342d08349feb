import type { MachineSheet } from '../catalog';
import { gather } from '../geometry';
import { type Machine, type Plan, resolveSheet, type Table } from '../plan';
import { deriveAppliances } from './deriveAppliances';
import { deriveLayouts } from './deriveLayouts';
import { deriveLines } from './deriveLines';
import { deriveMarks } from './deriveMarks';
import { deriveRunSolids } from './deriveRunSolids';
import { deriveColumnSolids, deriveHoodSolids, deriveMachineSolids } from './deriveSolids';
import { deriveTableSolids } from './deriveTableSolids';
import { keepWorktops, layTable } from './layTable';
import { measureJoint } from './measureJoint';
import { createListKeeper, memoizeByIdentity } from './memoizeByIdentity';
import { placeHood } from './placeHood';
import { placeMachine, type TableAtSide } from './placeMachine';
import { placeRoom } from './placeRoom';
import { placeRun } from './placeRun';
import { placeTable } from './placeTable';
import { keepFurnishings, placeThing } from './placeThing';
import type { Joint, Line, PlacedHood, PlacedMachine, PlacedRoom, PlacedRun, PlacedTable, PlacedThing, Scene, Solid } from './types';

/**
 * The plan worked out in space. Each stage is remembered by the identity of what it takes, so after
 * an edit only the changed thing and what depends on it are worked out again.
 */
export const deriveScene = memoizeByIdentity((plan: Plan): Scene => {
  const room = placeRoom(plan.room);
  const hosts = plan.machines.map((machine) => ({ machine, sheet: resolveSheet(plan, machine) }));
  const machines = keepMachines(hosts.map((host, at) => placeHost(host, at, plan.tables, room)));
  const appliances = deriveAppliances(hosts);
  const tables = keepTables(gather(plan.tables, (table) => placeAtHost(table, hosts)));
  const worktops = keepWorktops(tables.map(({ table, machine }) => layTable(table, machine)));
  const standing = plan.things.map((thing, at) => placeThing(thing, at));
  const things = keepThings(standing.map(({ placed }) => placed));
  const furnishings = keepFurnishings(standing.map(({ furnishing }) => furnishing));
  const hoods = keepHoods(plan.hoods.map((hood) => placeHood(hood, machines)));
  const runs = keepRuns(plan.runs.map((run) => placeRun(run, machines.find(({ machine }) => machine.id === run.machine) ?? null)));
  const joints = keepJoints(gather(tables, (table) => jointOf(table, machines)));
  const solids = keepSolids([
    ...gather(machines, (placed) => deriveMachineSolids(placed)),
    ...gather(tables, (table) => deriveTableSolids(table, trackHeight(table, machines))),
    ...standing.map(({ solid }) => solid),
    ...gather(hoods, (placed) => deriveHoodSolids(placed)),
    ...gather(runs, (placed) => deriveRunSolids(placed)),
    ...deriveColumnSolids(room),
  ]);
  const lines = keepLines(deriveLines({ machines, tables, joints, room, things, solids, settings: plan.settings }));
  const layouts = deriveLayouts(lines, appliances, worktops);
  const hooded = keepHooded(
    gather(machines, ({ machine: { id } }) => (hoods.some(({ covers }) => covers.some(({ machine }) => machine === id)) ? [id] : [])),
  );
  const marks = deriveMarks({ lines, tables, hoods, runs, things });
  return {
    plan,
    room,
    machines,
    appliances,
    layouts,
    tables,
    worktops,
    things,
    furnishings,
    hoods,
    hooded,
    runs,
    joints,
    lines,
    solids,
    marks,
  };
});

const keepMachines = createListKeeper<PlacedMachine>();
const keepTables = createListKeeper<PlacedTable>();
const keepThings = createListKeeper<PlacedThing>();
const keepHoods = createListKeeper<PlacedHood>();
const keepHooded = createListKeeper<string>();
const keepRuns = createListKeeper<PlacedRun>();
const keepJoints = createListKeeper<Joint>();
const keepLines = createListKeeper<Line>();
const keepSolids = createListKeeper<Solid>();

/** A machine of the plan with its data sheet. */
interface Host {
  machine: Machine;
  sheet: MachineSheet;
}

function placeHost({ machine, sheet }: Host, at: number, tables: readonly Table[], room: PlacedRoom): PlacedMachine {
  const joinedAt = (side: string) =>
    tables.find(({ place }) => place.kind === 'joined' && place.machine === machine.id && place.side === side)?.id ?? null;
  return placeMachine(
    machine,
    sheet,
    at,
    room.walls,
    tablesAtSides(machine, joinedAt('left'), joinedAt('right'), joinedAt('front'), joinedAt('back')),
  );
}

type Id = string | null;

const tablesAtSides = memoizeByIdentity(
  (_of: Machine, left: Id, right: Id, front: Id, back: Id): TableAtSide => ({ left, right, front, back }),
);

function placeAtHost(table: Table, hosts: readonly Host[]): PlacedTable[] {
  const { place } = table;
  const host = place.kind === 'joined' ? hosts.find(({ machine }) => machine.id === place.machine) : undefined;
  const placed = placeTable(table, host?.machine ?? null, host?.sheet ?? null);
  return placed === null ? [] : [placed];
}

function jointOf(table: PlacedTable, machines: readonly PlacedMachine[]): Joint[] {
  const host = machines.find(({ machine }) => machine.id === table.machine);
  const joint = host === undefined ? null : measureJoint(table, host);
  return joint === null ? [] : [joint];
}

/** Height of tables where none is known: 34 in, common practice. */
const USUAL_DECK_HEIGHT = 863.6;

const trackHeight = ({ machine }: PlacedTable, machines: readonly PlacedMachine[]) =>
  machines.find((host) => host.machine.id === machine)?.sheet.deckHeight ?? USUAL_DECK_HEIGHT;
