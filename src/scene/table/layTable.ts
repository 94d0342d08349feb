import type { Table } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { DeckNode, LaidDeck, LaidFitting } from '../types';
import { followWater } from './followWater';

/** The deck and the fittings of a table along its rack centre line, wherever it stands. */
export const layTable = memoizeByIdentity((table: Table): LaidDeck & { fittings: LaidFitting[] } => {
  const fittings = table.fittings.map((fitting) => ({
    fitting,
    from: fitting.at - fitting.length / 2,
    to: fitting.at + fitting.length / 2,
  }));
  const nodes = deriveDeckNodes(table);
  return { length: nodes.at(-1)?.s ?? 0, nodes, water: deriveWater(nodes, fittings), fittings };
});

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
function deriveWater(nodes: readonly DeckNode[], fittings: readonly LaidFitting[]): LaidDeck['water'] {
  const profile = nodes.flatMap(({ s, z }) => (z === null ? [] : [{ s, z }]));
  if (profile.length < nodes.length) return null;
  return followWater(
    profile,
    fittings.filter(({ fitting }) => fitting.kind === 'sink'),
  );
}
