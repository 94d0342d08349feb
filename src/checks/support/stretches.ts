import type { PlacedTable } from '../../scene';

/**
 * Centre of the free stretch of a table, nearest to the machine but beyond its rack landing, that takes
 * a fitting of this length; null when there is none. An overshelf takes no room on the deck.
 */
export function findFreeStretch(table: PlacedTable, length: number): number | null {
  const taken = table.fittings.filter(({ fitting }) => fitting.kind !== 'overshelf').toSorted((a, b) => a.from - b.from);
  let from = Math.max(0, ...taken.filter(({ fitting }) => fitting.kind === 'landing').map(({ to }) => to));
  for (const fitting of taken.filter(({ to }) => to > from)) {
    if (fitting.from - from >= length) break;
    from = Math.max(from, fitting.to);
  }
  return from + length <= table.length ? from + length / 2 : null;
}
