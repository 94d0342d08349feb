import { type Table, tableLength } from '../../plan';

/**
 * Makes room on a table for something of this length beginning at `from`: what stands there or beyond
 * moves outward as far as it must, and the table grows at its end. Gives the centre of the room made.
 * Overshelves hang above and stay.
 */
export function makeRoom(table: Table, from: number, length: number): number {
  const onDeck = table.fittings.filter(({ kind }) => kind !== 'overshelf');
  const beyond = onDeck.filter(({ at }) => at >= from);
  const before = onDeck.filter(({ at }) => at < from);
  const start = Math.max(from, 0, ...before.map(({ at, length: own }) => at + own / 2));
  const next = Math.min(Infinity, ...beyond.map(({ at, length: own }) => at - own / 2));
  const push = Math.max(0, start + length - next);
  for (const fitting of beyond) fitting.at += push;
  const needed = Math.max(start + length, ...beyond.map(({ at, length: own }) => at + own / 2));
  const last = table.legs.at(-1);
  if (last !== undefined) last.length += Math.max(0, needed - tableLength(table));
  return start + length / 2;
}
