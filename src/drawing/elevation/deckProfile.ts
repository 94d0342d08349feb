import type { DeckNode, PlacedTable } from '../../scene';

/** Deck height at a place along a table, between the heights that are known; null when one of them is not. */
export function deckHeightAt({ nodes }: PlacedTable, s: number): number | null {
  const next = nodes.findIndex((node) => node.s >= s - 1e-9);
  const b = next < 0 ? nodes.at(-1) : nodes[next];
  const a = next > 0 ? nodes[next - 1] : undefined;
  if (b === undefined) return null;
  return a === undefined || next < 0 ? b.z : between(a, b, s);
}

function between(a: DeckNode, b: DeckNode, s: number): number | null {
  if (a.z === null || b.z === null) return s > b.s - 1e-6 ? b.z : null;
  return b.s - a.s < 1e-9 ? b.z : a.z + ((b.z - a.z) * (s - a.s)) / (b.s - a.s);
}

/** Places along a table where its profile is drawn: its nodes and whatever is asked for besides, in order. */
export function profilePlaces({ nodes }: PlacedTable, from: number, to: number): number[] {
  return [from, ...nodes.map((node) => node.s).filter((s) => s > from + 1e-6 && s < to - 1e-6), to];
}
