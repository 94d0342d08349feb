import { directionOf, distance } from '../../geometry';
import { addLeg, addRunPoint, createId, type Fitting, freeTable, type Plan, removeLeg, removeRunPoint, tableLength } from '../../plan';
import { optionWords } from '../../text';
import { turnRound } from '../gestures/moveTable';
import { type CommandResult, carryOut, refusal } from './commandResult';
import { makeRoom } from './makeRoom';
import { newFitting } from './newFitting';

/** Length of a leg that is added, mm. */
const NEW_LEG = 900;

/** How far a run goes on with a point that is added, mm. */
const NEW_RUN_LEG = 600;

/** Adds a leg at the far end of a table, after a turn (clockwise, degrees). */
export function addTableLeg(plan: Plan, table: string, turnDeg: number): CommandResult {
  return carryOut(plan, 'Add leg to table', addLeg(table, { length: NEW_LEG, turnDeg }), [table]);
}

/** Takes a leg out of a table; its last leg stays. */
export function removeTableLeg(plan: Plan, table: string, leg: number): CommandResult {
  const legs = plan.tables.find(({ id }) => id === table)?.legs.length ?? 0;
  if (legs < 2) return refusal('A table has one leg at least. Remove the table itself.');
  return carryOut(plan, 'Remove leg of table', removeLeg(table, leg), [table]);
}

/** Adds a fitting beyond the last one of a table; an overshelf over its middle. */
export function addTableFitting(plan: Plan, table: string, kind: Fitting['kind']): CommandResult {
  const id = createId(plan, kind);
  return carryOut(
    plan,
    `Add ${optionWords(kind)}`,
    (draft) => {
      const target = draft.tables.find((item) => item.id === table);
      if (target === undefined) return;
      const whole = tableLength(target);
      const shape = newFitting(kind, whole);
      const end = Math.max(0, ...target.fittings.filter((item) => item.kind !== 'overshelf').map((item) => item.at + item.length / 2));
      const at = kind === 'overshelf' ? whole / 2 : makeRoom(target, end, shape.length);
      target.fittings.push({ ...shape, id, at });
    },
    [id],
  );
}

/** Lets a table go of its machine; it stays where it is. */
export function setTableFree(plan: Plan, table: string): CommandResult {
  return carryOut(plan, 'Set table free', freeTable(table), [table]);
}

/** Lets a free table begin at its other end. */
export function turnTableRound(plan: Plan, table: string): CommandResult {
  const item = plan.tables.find(({ id }) => id === table);
  if (item === undefined || item.place.kind === 'joined') return refusal('A joined table begins at its machine. Set it free first.');
  return carryOut(plan, 'Turn table round', turnRound(item), [table]);
}

/** Adds a point at the end of a run, on in the direction of its last leg. */
export function addPointToRun(plan: Plan, run: string): CommandResult {
  const item = plan.runs.find(({ id }) => id === run);
  const [before, last] = [item?.points.at(-2), item?.points.at(-1)];
  if (item === undefined || last === undefined) return refusal('This run is no longer in the plan.');
  const size = before === undefined ? 0 : distance(before, last);
  const direction = before === undefined || size < 1 ? directionOf(0) : { x: (last.x - before.x) / size, y: (last.y - before.y) / size };
  const point = { x: last.x + direction.x * NEW_RUN_LEG, y: last.y + direction.y * NEW_RUN_LEG, z: last.z };
  return carryOut(plan, 'Add point to duct run', addRunPoint(run, item.points.length, point), [run]);
}

/** Takes a point out of a run; its last point stays. */
export function removePointOfRun(plan: Plan, run: string, index: number): CommandResult {
  const points = plan.runs.find(({ id }) => id === run)?.points.length ?? 0;
  if (points < 2) return refusal('A run has one point at least. Remove the run itself.');
  return carryOut(plan, 'Remove point of duct run', removeRunPoint(run, index), [run]);
}
