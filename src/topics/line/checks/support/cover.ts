import { area, clipConvex, directionTo, dot, sub } from '../../../../geometry';
import type { PlacedControls, PlacedMachine, PlacedTable } from '../../../../scene';

/** A sliver of this area is rounding of the arithmetic, mm². */
const SLIVER = 1;

/**
 * Width of the controls, along their face, before which this table's deck lies at a height above their middle.
 * 0 when the place before them is free, or the deck passes below them.
 */
export function measureCover(table: PlacedTable, { sheet }: PlacedMachine, { face, centre, reachZone }: PlacedControls): number {
  const deckHeight = table.nodes[0]?.z ?? sheet.deckHeight;
  if (deckHeight <= centre.z) return 0;
  const along = directionTo(face.a, face.b);
  const covered = table.deck
    .map((piece) => clipConvex(piece, reachZone))
    .filter((overlap) => overlap.length > 2 && area(overlap) > SLIVER)
    .flatMap((overlap) => overlap.map((p) => dot(sub(p, face.a), along)));
  return covered.length === 0 ? 0 : Math.max(...covered) - Math.min(...covered);
}
