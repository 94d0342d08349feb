import type { DataSheet, Side } from '../../catalog';
import type { Machine, Plan } from '../../plan';
import { deriveScene } from '../../scene';

/** Machines that a data sheet of the plan describes. */
export const machinesOf = (plan: Plan, sheet: string): Machine[] => plan.machines.filter((machine) => machine.sheet === sheet);

/** "machine 5", "machines 5 and 8": by the marks of the drawing. */
export function sayMachines(plan: Plan, machines: readonly Machine[]): string {
  const { marks } = deriveScene(plan);
  const words = machines.map(({ id }) => marks[id] ?? id);
  const last = words.pop() ?? '';
  return words.length === 0 ? `machine ${last}` : `machines ${words.join(', ')} and ${last}`;
}

/** Why a door can't be taken out of a data sheet; null where it can. */
export function whyDoorStays(plan: Plan, sheet: DataSheet, side: Side): string | null {
  const using = machinesOf(plan, sheet.id).map(({ id }) => id);
  const joined = plan.tables.find(({ place }) => place.kind === 'joined' && place.side === side && using.includes(place.machine));
  if (joined !== undefined) return `The door at the ${side} stays: the ${joined.role} table is joined there. Move the table first.`;
  return sheet.doors.every((door) => door === side) ? 'A machine has one door at least.' : null;
}

/** Why a connection can't be removed or become another: a run begins at the only collar. Null where it can. */
export function whyCollarStays(plan: Plan, sheet: DataSheet, index: number): string | null {
  const isOnly = sheet.connections.every(({ kind }, at) => (kind === 'collar') === (at === index));
  const using = machinesOf(plan, sheet.id).filter(({ id }) => plan.runs.some((run) => run.machine === id));
  return isOnly && using.length > 0 ? `The collar stays: the duct run of ${sayMachines(plan, using)} begins there.` : null;
}
