import { directionTo, distance, leftOf, rightOf, signedArea } from '../../geometry';
import type { Room } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { Wall } from '../types';

/**
 * The walls of an outline. Each runs as the plan walks it, since openings are measured from its
 * start; only its inward normal depends on the direction of the walk.
 */
export const placeWalls = memoizeByIdentity((outline: Room['outline']): Wall[] => {
  const inwardOf = signedArea(outline) < 0 ? leftOf : rightOf;
  return outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from;
    const a = { x: from.x, y: from.y };
    const b = { x: to.x, y: to.y };
    const direction = directionTo(a, b);
    return { id: from.id, a, b, length: distance(a, b), direction, inward: inwardOf(direction) };
  });
});
