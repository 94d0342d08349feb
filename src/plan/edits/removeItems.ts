import type { Recipe } from '../edit';
import type { Plan } from '../planSchema';
import { freeInPlace } from './joinTables';
import { removeCorner } from './walls';

/**
 * Removes whatever bears these ids, with what can't be without it: a machine's runs, a table's fittings. Tables joined to
 * a removed machine become free where they stand. Data sheets in use stay, and so do the last three corners.
 */
export function removeItems(ids: readonly string[]): Recipe {
  return (draft) => {
    const gone = new Set(ids);
    for (const table of draft.tables) if (table.place.kind === 'joined' && gone.has(table.place.machine)) freeInPlace(draft, table);
    for (const id of draft.room.outline.map((corner) => corner.id)) if (gone.has(id)) removeCorner(id)(draft);
    for (const run of draft.runs) if (gone.has(run.machine)) gone.add(run.id);
    for (const list of lists(draft)) drop(list, gone);
    const used = new Set(draft.machines.map((machine) => machine.sheet));
    drop(draft.sheets, new Set([...gone].filter((id) => !used.has(id))));
  };
}

function lists(draft: Plan): { id: string }[][] {
  const { openings, columns, floorDrains, stubs } = draft.room;
  const fittings = draft.tables.map((table) => table.fittings);
  return [openings, columns, floorDrains, stubs, ...fittings, draft.machines, draft.tables, draft.things, draft.hoods, draft.runs];
}

/** Takes items out one by one, so that those which stay keep their identity. */
function drop(list: { id: string }[], gone: ReadonlySet<string>): void {
  for (let index = list.length - 1; index >= 0; index--) if (gone.has(list[index]?.id ?? '')) list.splice(index, 1);
}
