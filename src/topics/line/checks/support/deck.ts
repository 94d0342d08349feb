import { editTable, list, type Repair } from '../../../../rules';
import type { PlacedTable } from '../../../../scene';

/** ¼ in per ft: the fall that a repair gives a table. Common practice. */
const GOOD_FALL = 1 / 48;

/**
 * Raises the turns and the far end, never the joint, until every stretch falls ¼ in per ft toward the
 * machine; nothing is lowered. null where a height is missing or nothing needs raising.
 */
export function raiseDeck({ table, nodes }: PlacedTable): Repair | null {
  const raised = raiseNodes(nodes);
  if (raised === null) return null;
  const lifts = raised.flatMap(({ z, before }, i) => (z - before > 0.5 ? [{ by: z - before, where: nodeWords(i, nodes.length) }] : []));
  if (lifts.length === 0) return null;
  return {
    id: 'raise-deck',
    label: (f) => `Raise ${list(lifts.map(({ by, where }) => `${where} ${f.length(by)}`).toReversed())}`,
    edit: (draft) =>
      editTable(draft, table.id, ({ deck }) => {
        if (deck.kind === 'fall') deck.fall = GOOD_FALL;
        else deck.heights = raised.map(({ z }) => z);
      }),
  };
}

function raiseNodes(nodes: PlacedTable['nodes']): { z: number; before: number }[] | null {
  const raised: { z: number; before: number }[] = [];
  for (const [i, node] of nodes.entries()) {
    if (node.z === null) return null;
    const inner = raised.at(-1);
    const run = node.s - (nodes[i - 1]?.s ?? 0);
    raised.push({ z: inner === undefined ? node.z : Math.max(node.z, inner.z + run * GOOD_FALL), before: node.z });
  }
  return raised;
}

function nodeWords(i: number, length: number): string {
  if (i === length - 1) return 'the far end';
  return length === 3 ? 'the turn' : `turn ${i}`;
}

/** The first deck height that is missing: what people call it and its path within the deck. */
export function findMissingHeight({ table: { deck } }: PlacedTable): { what: string; path: (string | number)[] } {
  if (deck.kind === 'fall') {
    if (deck.jointHeight === null) return { what: 'deck height at the joint', path: ['jointHeight'] };
    return { what: 'fall', path: ['fall'] };
  }
  const index = Math.max(0, deck.heights.indexOf(null));
  const where = index === 0 ? 'the joint' : nodeWords(index, deck.heights.length);
  return { what: `deck height at ${where}`, path: ['heights', index] };
}
