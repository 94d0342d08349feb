import { angleOf, distanceToSegment, normalizeDeg, type Point } from '../../geometry';
import type { Scene } from '../../scene';
import { nearestWall } from '../gestures/moveOpening';

/** Farther from a wall than half its depth and this, a thing does not turn its back to it, mm. */
const BESIDE = 600;

/** The rotation of a thing with its back to the wall beside it; 0 away from walls. */
export function facingFrom({ room }: Scene, at: Point, depth: number): number {
  const wall = nearestWall(room.walls, at);
  if (wall === undefined || distanceToSegment(at, wall) > depth / 2 + BESIDE) return 0;
  // At rotation 0 the front looks down the paper, 90° from the direction to the right.
  return normalizeDeg(angleOf(wall.inward) - 90);
}
