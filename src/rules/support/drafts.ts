import type { Hood, Machine, Plan, Run, Table, Thing } from '../../plan';

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

/** Changes one free-standing thing of a draft; does nothing when it is gone. */
export function editThing(draft: Plan, id: string, change: (thing: Thing) => void): void {
  const thing = draft.things.find((item) => item.id === id);
  if (thing !== undefined) change(thing);
}

/** Changes one hood of a draft; does nothing when it is gone. */
export function editHood(draft: Plan, id: string, change: (hood: Hood) => void): void {
  const hood = draft.hoods.find((item) => item.id === id);
  if (hood !== undefined) change(hood);
}

/** Changes one run of a draft; does nothing when it is gone. */
export function editRun(draft: Plan, id: string, change: (run: Run) => void): void {
  const run = draft.runs.find((item) => item.id === id);
  if (run !== undefined) change(run);
}
