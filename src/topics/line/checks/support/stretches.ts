import type { LaidFitting, PlacedTable } from '../../../../scene';

/** A stretch along a table, from the joint outward. */
export interface Stretch {
  from: number;
  to: number;
}

/** What a length may miss of a stretch that takes it: rounding alone. */
const ROUNDING = 1e-6;

/**
 * Centre of the free stretch of a table, nearest to the machine but beyond its rack landing, that takes
 * a fitting of this length; null when there is none. An overshelf takes no room on the deck.
 */
export function findFreeStretch(table: PlacedTable, length: number): number | null {
  const onDeck = table.fittings.filter(({ fitting }) => fitting.kind !== 'overshelf');
  const start = Math.max(0, ...onDeck.filter(({ fitting }) => fitting.kind === 'landing').map(({ to }) => to));
  const free = listFreeStretches(table, onDeck, length).find(({ to }) => to - start >= length - ROUNDING);
  return free === undefined ? null : Math.max(free.from, start) + length / 2;
}

/** The stretches of a table that `taken` leaves free and that hold this length, from the machine outward. */
export function listFreeStretches(table: PlacedTable, taken: readonly LaidFitting[], length: number): Stretch[] {
  const inOrder = taken.toSorted((a, b) => a.from - b.from);
  const starts = inOrder.map((_, i) => Math.max(0, ...inOrder.slice(0, i + 1).map(({ to }) => to)));
  const ends = [...inOrder.map(({ from }) => from), table.length];
  return [0, ...starts]
    .map((from, i) => ({ from, to: Math.min(ends[i] ?? table.length, table.length) }))
    .filter(({ from, to }) => to - from >= length - ROUNDING);
}
