import { createMessages, editTable, type Repair } from '../../../../rules';
import type { PlacedTable } from '../../../../scene';

/** ¼ in per ft: the fall that a repair gives a table. Common practice. */
const GOOD_FALL = 1 / 48;

/** A place of the deck whose height is measured; a turn by its number where there are several. */
export type DeckNode = 'joint' | 'turn' | 'far-end' | number;

/** How much such a place is to be raised. */
export interface Lift {
  at: DeckNode;
  by: number;
}

export interface RaiseDeckMessages {
  'repair/raise-deck': { lifts: Lift[] };
}

const say = createMessages<RaiseDeckMessages>();

/**
 * Raises the turns and the far end, never the joint, until every stretch falls ¼ in per ft toward the
 * machine; nothing is lowered. None where a height is missing or nothing needs raising.
 */
export function raiseDeck(placed: PlacedTable): Repair[] {
  const { table, nodes } = placed;
  const raised = raiseNodes(nodes);
  const lifts = listLifts(placed);
  if (raised === null || lifts.length === 0) return [];
  return [
    {
      id: 'raise-deck',
      label: say('repair/raise-deck', { lifts }),
      edit: (draft) =>
        editTable(draft, table.id, ({ deck }) => {
          if (deck.kind === 'fall') deck.fall = GOOD_FALL;
          else deck.heights = raised.map(({ z }) => z);
        }),
    },
  ];
}

/** What is to be raised for that, from the far end to the machine. */
export function listLifts({ nodes }: PlacedTable): Lift[] {
  const raised = raiseNodes(nodes) ?? [];
  return raised.flatMap(({ z, before }, i) => (z - before > 0.5 ? [{ at: nodeAt(i, nodes.length), by: z - before }] : [])).toReversed();
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

/** Of those that can be raised: all but the joint. */
function nodeAt(i: number, length: number): DeckNode {
  if (i === length - 1) return 'far-end';
  return length === 3 ? 'turn' : i;
}

/** What is missing of a deck, the fall or the height at a place of it, and its path within the deck. */
export function findMissingHeight({ table: { deck } }: PlacedTable): { missing: 'fall' | DeckNode; path: (string | number)[] } {
  if (deck.kind === 'fall') {
    return deck.jointHeight === null ? { missing: 'joint', path: ['jointHeight'] } : { missing: 'fall', path: ['fall'] };
  }
  const index = Math.max(0, deck.heights.indexOf(null));
  return { missing: index === 0 ? 'joint' : nodeAt(index, deck.heights.length), path: ['heights', index] };
}
