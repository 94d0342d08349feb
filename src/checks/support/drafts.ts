import type { Machine, Plan, Table } from '../../plan';

/** Changes one machine of a draft; does nothing when it is gone. */
export function editMachine(draft: Plan, id: string, change: (machine: Machine) => void): void {
  const machine = draft.machines.find((item) => item.id === id);
  if (machine !== undefined) change(machine);
}

/** Changes one table of a draft; does nothing when it is gone. */
export function editTable(draft: Plan, id: string, change: (table: Table) => void): void {
  const table = draft.tables.find((item) => item.id === id);
  if (table !== undefined) change(table);
}
