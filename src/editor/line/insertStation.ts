import {
  createId,
  FLUSH,
  LINE_CONFIGURATIONS,
  type LineSide,
  lineSides,
  type Plan,
  type Recipe,
  resolveDataSheet,
  type Table,
} from '../../plan';
import { deriveScene, type StationKind } from '../../scene';
import { optionWords } from '../../text';
import { createPlainTable } from '../tools/plainTable';
import { addStorage } from './addStorage';
import { type CommandResult, carryOut, refusal } from './commandResult';
import { makeRoom } from './makeRoom';
import { type FittingStation, isFittingStation, RANK, ROLE_OF, shapeOf, stationOf } from './stations';

/** A new table is at least this long, mm. */
const LEAST_TABLE = 1600;

/**
 * Puts a station into a line, after the given one on the way of the rack (null: at its beginning). It
 * makes room on its table, which grows when it must; where the table itself is missing, it comes with it.
 */
export function insertStation(plan: Plan, machine: string, kind: StationKind, after: StationKind | null): CommandResult {
  if (!plan.machines.some(({ id }) => id === machine)) return refusal('This machine is no longer in the plan.');
  if (kind === 'machine') return refusal('The line has its machine.');
  if (!isFittingStation(kind)) return addStorage(plan, machine);
  const role = ROLE_OF[kind] ?? 'soiled';
  const table = tableOf(plan, machine, role);
  const side = table === null ? freeSide(plan, machine, role) : null;
  if (table === null && side === null) return refusal(`No door of the machine is free for a ${role} table.`);
  const id = createId(plan, kind);
  const recipe: Recipe = (draft) => {
    const target = table === null ? addTableAt(draft, machine, role, side as LineSide) : draft.tables.find((item) => item.id === table.id);
    if (target !== undefined) place(draft, target, kind, after, id);
  };
  return carryOut(plan, `Add ${optionWords(kind)}`, recipe, [id]);
}

/** The line's table of a role. */
function tableOf(plan: Plan, machine: string, role: Table['role']): Table | null {
  const line = deriveScene(plan).lines.find((item) => item.machine.machine.id === machine);
  const placed = role === 'soiled' ? line?.soiled : line?.clean;
  return placed?.table ?? null;
}

/** A side with a free door that makes a configuration with the table that is there. */
function freeSide(plan: Plan, machine: string, role: Table['role']): LineSide | null {
  const host = plan.machines.find(({ id }) => id === machine);
  if (host === undefined) return null;
  const { doors } = resolveDataSheet(plan, host);
  const taken = plan.tables.flatMap(({ place: at }) => (at.kind === 'joined' && at.machine === machine ? [at.side] : []));
  const options = LINE_CONFIGURATIONS.flatMap((configuration) => [
    lineSides(configuration, 'left-to-right'),
    lineSides(configuration, 'right-to-left'),
  ]);
  const fits = options.find((sides) => {
    const [own, other] = role === 'soiled' ? [sides.soiled, sides.clean] : [sides.clean, sides.soiled];
    return doors.includes(own.side) && !taken.includes(own.side) && taken.every((side) => side === other.side);
  });
  return fits === undefined ? null : fits[role];
}

function addTableAt(draft: Plan, machine: string, role: Table['role'], { side, operatorSide }: LineSide): Table | undefined {
  const place: Table['place'] = { kind: 'joined', machine, side, ...FLUSH };
  const id = createId(draft, `${role}-table`);
  draft.tables.push({ ...createPlainTable(draft, { id, role, place, legs: [{ length: LEAST_TABLE, turnDeg: 0 }] }), operatorSide });
  return draft.tables.at(-1);
}

function place(draft: Plan, table: Table, kind: FittingStation, after: StationKind | null, id: string): void {
  const shape = shapeOf(kind, draft.settings);
  const at = makeRoom(table, startFor(table, kind, after, shape.length), shape.length);
  table.fittings.push({ ...shape, id, at });
}

/**
 * Where a station begins along its table. On the soiled side the rack comes from the far end, so what
 * follows a station lies nearer to the joint, in the gap before it; on the clean side it lies beyond.
 */
function startFor(table: Table, kind: FittingStation, after: StationKind | null, length: number): number {
  const anchor = table.fittings.find((fitting) => stationOf(fitting, table.role) === after);
  if (anchor !== undefined && table.role === 'clean') return endOf(anchor);
  if (anchor !== undefined) {
    const edge = anchor.at - anchor.length / 2;
    const before = table.fittings.filter((fitting) => fitting.kind !== 'overshelf' && fitting.at < edge);
    return Math.max(0, edge - length, ...before.map(endOf));
  }
  const nearer = table.fittings.filter((fitting) => {
    const station = stationOf(fitting, table.role);
    return station !== null && RANK[station] <= RANK[kind];
  });
  return Math.max(0, ...nearer.map(endOf));
}

const endOf = ({ at, length }: Table['fittings'][number]) => at + length / 2;
