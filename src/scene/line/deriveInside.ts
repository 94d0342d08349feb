import { memoizeByIdentity } from '../memoizeByIdentity';
import type { Configuration, Inside, PlacedMachine } from '../types';

/**
 * Where the operator stands, before tables are taken out of it: the quadrant between the two sides
 * of a corner, or the half-plane before the front. null when the tables make no configuration.
 */
export function deriveInside(machine: PlacedMachine, configuration: Configuration): Inside | null {
  switch (configuration.kind) {
    case 'none':
      return null;
    case 'straight':
      return insideOf(machine, 'front');
    case 'corner':
      return insideOf(machine, configuration.side);
  }
}

/** Before the front alone, or between the front and a side. Seen from outside, the front's edge runs from the machine's left to its right. */
const insideOf = memoizeByIdentity(({ sides }: PlacedMachine, other: 'front' | 'left' | 'right'): Inside => {
  const { front } = sides;
  if (other === 'front') return { corner: front.centre, normals: [front.normal] };
  return { corner: other === 'left' ? front.edge.a : front.edge.b, normals: [sides[other].normal, front.normal] };
});
