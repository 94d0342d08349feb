import type { Point } from '../../geometry';
import { createId } from '../createId';
import type { Recipe } from '../edit';
import type { Plan, Table } from '../planSchema';
import { copyOf } from './copyOf';
import { freeInPlace } from './joinTables';
import { moveItems } from './moveItems';

/**
 * Doubles things beside themselves, with fresh ids. Copies that belong together stay together: a table copied with its
 * machine is joined to the copy; one copied alone becomes free. A machine takes its runs along. Corners are not doubled.
 */
export function duplicateItems(ids: readonly string[], by: Point): Recipe {
  return (draft) => {
    const chosen = new Set(ids);
    for (const run of draft.runs) if (chosen.has(run.machine)) chosen.add(run.id);
    const fresh = new Map<string, string>();
    copyFittings(draft, chosen);
    for (const list of lists(draft)) copyInto(draft, list, chosen, fresh);
    relate(draft, fresh);
    moveItems(
      [...fresh.values()].filter((id) => !isCarried(draft, id, fresh)),
      by,
    )(draft);
  };
}

type Named = { id: string };

function lists(draft: Plan): Named[][] {
  const { openings, columns, floorDrains, stubs } = draft.room;
  return [openings, columns, floorDrains, stubs, draft.machines, draft.tables, draft.things, draft.hoods, draft.runs];
}

function copyInto(draft: Plan, list: Named[], chosen: ReadonlySet<string>, fresh: Map<string, string>): void {
  for (const item of list.filter(({ id }) => chosen.has(id))) {
    const copy = { ...copyOf(item), id: createId(draft, stemOf(item.id)) };
    fresh.set(item.id, copy.id);
    list.push(copy);
    if ('fittings' in copy) renameFittings(draft, copy as Named & Pick<Table, 'fittings'>);
  }
}

/** `table-2` gives `table`. */
const stemOf = (id: string): string => id.replace(/-\d+$/, '');

function renameFittings(draft: Plan, table: Pick<Table, 'fittings'>): void {
  const fittings = table.fittings;
  table.fittings = [];
  const list = draft.tables.at(-1)?.fittings ?? [];
  for (const fitting of fittings) list.push({ ...fitting, id: createId(draft, stemOf(fitting.id)) });
}

/** A fitting chosen by itself is doubled on its own table, in the same place. */
function copyFittings(draft: Plan, chosen: ReadonlySet<string>): void {
  for (const table of draft.tables) {
    for (const fitting of table.fittings.filter(({ id }) => chosen.has(id) && !chosen.has(table.id))) {
      table.fittings.push({ ...copyOf(fitting), id: createId(draft, stemOf(fitting.id)) });
    }
  }
}

function relate(draft: Plan, fresh: ReadonlyMap<string, string>): void {
  const copies = new Set(fresh.values());
  for (const run of draft.runs) if (copies.has(run.id)) run.machine = fresh.get(run.machine) ?? run.machine;
  for (const table of draft.tables) {
    if (!copies.has(table.id) || table.place.kind === 'free') continue;
    const machine = fresh.get(table.place.machine);
    if (machine === undefined) freeInPlace(draft, table);
    else table.place.machine = machine;
  }
}

/** A run whose machine was copied too moves with it. */
function isCarried(draft: Plan, id: string, fresh: ReadonlyMap<string, string>): boolean {
  const run = draft.runs.find((item) => item.id === id);
  return run !== undefined && [...fresh.values()].includes(run.machine);
}
