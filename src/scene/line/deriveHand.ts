import { add, dot, leftOf, type Point, scale } from '../../geometry';
import type { Hand, Inside } from '../types';

/**
 * The operator stands inside and faces the machine. Soiled ware from the operator's left makes the
 * line left-to-right, at any rotation and for either kind of configuration.
 */
export function deriveHand({ normals }: Inside, soiledNormal: Point): Hand {
  const outward = normals.reduce(add);
  const facing = scale(outward, -1);
  return dot(leftOf(facing), soiledNormal) > 0 ? 'left-to-right' : 'right-to-left';
}
