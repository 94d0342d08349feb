import { gather } from '../geometry';
import type { Table } from '../plan';
import { followWater } from './followWater';
import { hasSameFields } from './hasSameFields';
import { createListKeeper, memoizeByIdentity } from './memoizeByIdentity';
import type { DeckNode, LaidFitting, Worktop } from './types';

/** A table as it is made, wherever it stands. */
export const layTable = memoizeByIdentity((table: Table, machine: string | null): Worktop => {
  const fittings = table.fittings.map((fitting) => ({
    fitting,
    from: fitting.at - fitting.length / 2,
    to: fitting.at + fitting.length / 2,
  }));
  const nodes = deriveDeckNodes(table);
  const { place: _place, ...made } = table;
  return { table: made, machine, length: nodes.at(-1)?.s ?? 0, nodes, water: deriveWater(nodes, fittings), fittings };
});

/** The tables without their places; the same list as before while no more than their places changed. */
export const keepWorktops = createListKeeper<Worktop>(
  (one, other) => one === other || (one.machine === other.machine && hasSameFields(one.table, other.table)),
);

/** Deck heights at the joint, at each turn and at the far end, as far as they are known. */
function deriveDeckNodes({ deck, legs }: Table): DeckNode[] {
  let s = 0;
  return [0, ...legs.map(({ length }) => length)].map((length, i) => {
    s += length;
    return { s, z: heightAt(deck, i, s) };
  });
}

function heightAt(deck: Table['deck'], index: number, s: number): number | null {
  if (deck.kind === 'heights') return deck.heights[index] ?? null;
  if (deck.jointHeight === null) return null;
  if (s === 0) return deck.jointHeight;
  return deck.fall === null ? null : deck.jointHeight + deck.fall * s;
}

/** Where the water of the deck goes; null while a deck height is missing. */
function deriveWater(nodes: readonly DeckNode[], fittings: readonly LaidFitting[]): Worktop['water'] {
  const profile = gather(nodes, ({ s, z }) => (z === null ? [] : [{ s, z }]));
  if (profile.length < nodes.length) return null;
  return followWater(
    profile,
    fittings.filter(({ fitting }) => fitting.kind === 'sink'),
  );
}
