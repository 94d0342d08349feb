import { pointAt } from '../geometry';
import type { Table } from '../plan';
import { followWater } from './followWater';
import type { DeckNode, PlacedFitting, PlacedTable } from './types';

/** Deck heights at the joint, at each turn and at the far end, as far as they are known. */
export function deriveDeckNodes(deck: Table['deck'], path: PlacedTable['path'], lengths: readonly number[]): DeckNode[] {
  let s = 0;
  return path.map((point, i) => {
    s += lengths[i - 1] ?? 0;
    return { s, z: heightAt(deck, i, s), point };
  });
}

function heightAt(deck: Table['deck'], index: number, s: number): number | null {
  if (deck.kind === 'heights') return deck.heights[index] ?? null;
  if (deck.jointHeight === null) return null;
  if (s === 0) return deck.jointHeight;
  return deck.fall === null ? null : deck.jointHeight + deck.fall * s;
}

/** Where the water of the deck goes; null while a deck height is missing. */
export function deriveWater(
  nodes: readonly DeckNode[],
  path: PlacedTable['path'],
  fittings: readonly PlacedFitting[],
): PlacedTable['water'] {
  const profile = nodes.flatMap(({ s, z }) => (z === null ? [] : [{ s, z }]));
  if (profile.length < nodes.length) return null;
  const sinks = fittings.filter(({ fitting }) => fitting.kind === 'sink');
  const { stretches, pools, leastSlope } = followWater(profile, sinks);
  return { stretches, pools: pools.map((pool) => ({ ...pool, point: pointAt(path, pool.lowest).point })), leastSlope };
}
