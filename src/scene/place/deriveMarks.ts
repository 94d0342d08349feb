import type { Line, PlacedHood, PlacedRun, PlacedTable, PlacedThing } from '../types';

/** What bears an item mark. */
export interface Marked {
  lines: readonly Line[];
  tables: readonly PlacedTable[];
  hoods: readonly PlacedHood[];
  runs: readonly PlacedRun[];
  things: readonly PlacedThing[];
}

/**
 * Item marks `1`, `2`, …: each line's machine, then its tables (soiled before clean), free tables,
 * hoods, runs and things, each in the order of the plan.
 */
export function deriveMarks({ lines, tables, hoods, runs, things }: Marked): Record<string, string> {
  const ids = [
    ...lines.flatMap(({ machine }) => [machine.machine.id, ...idsOfTables(tables, machine.machine.id)]),
    ...idsOfTables(tables, null),
    ...hoods.map(({ hood }) => hood.id),
    ...runs.map(({ run }) => run.id),
    ...things.map(({ thing }) => thing.id),
  ];
  return Object.fromEntries(ids.map((id, i) => [id, String(i + 1)]));
}

function idsOfTables(tables: readonly PlacedTable[], machine: string | null): string[] {
  const own = tables.filter((table) => table.machine === machine);
  const ofRole = (role: string) => own.filter(({ table }) => table.role === role).map(({ table }) => table.id);
  return [...ofRole('soiled'), ...ofRole('clean')];
}
