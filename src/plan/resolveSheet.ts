import { findFamily, type MachineSheet } from '../catalog';
import type { Machine, Plan } from './planSchema';

/** The data sheet of a machine: the plan's own if it has one of that id, else the family's; undefined for neither. */
export function findSheet(plan: Pick<Plan, 'sheets'>, id: string): MachineSheet | undefined {
  return plan.sheets.find((sheet) => sheet.id === id) ?? findFamily(id);
}

/** As `findSheet`, for a machine of a valid plan, whose sheet is known to exist. */
export function resolveSheet(plan: Pick<Plan, 'sheets'>, machine: Machine): MachineSheet {
  const sheet = findSheet(plan, machine.sheet);
  if (sheet === undefined) throw new Error(`machine ${machine.id} names the data sheet ${machine.sheet}, which does not exist`);
  return sheet;
}
