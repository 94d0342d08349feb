import { type DataSheet, findFamily } from '../catalog';
import type { Machine, Plan } from './planSchema';

/** The data sheet of a machine: the plan's own if it has one of that id, else the family's; undefined for neither. */
export function findDataSheet(plan: Pick<Plan, 'sheets'>, id: string): DataSheet | undefined {
  return plan.sheets.find((sheet) => sheet.id === id) ?? findFamily(id);
}

/** As `findDataSheet`, for a machine of a valid plan, whose sheet is known to exist. */
export function resolveDataSheet(plan: Pick<Plan, 'sheets'>, machine: Machine): DataSheet {
  const sheet = findDataSheet(plan, machine.sheet);
  if (sheet === undefined) throw new Error(`machine ${machine.id} names the data sheet ${machine.sheet}, which does not exist`);
  return sheet;
}
