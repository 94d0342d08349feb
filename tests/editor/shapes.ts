import { type Box, createBox } from '../../src/editor/snap/box';
import { directionTo, distance, rightOf } from '../../src/geometry';
import { deriveScene, type Wall } from '../../src/scene';
import { emptyPlan } from './plans';

/** The walls of a room of 8 × 5 m, its corner at the origin. */
export const roomWalls: readonly Wall[] = deriveScene(emptyPlan()).room.walls;

/** A box about a place; 200 × 100 where nothing else is said. */
export const boxAt = (x: number, y: number, width = 200, depth = 100, rotationDeg = 0): Box =>
  createBox('box', { x, y }, rotationDeg, width, depth);

/** A wall from place to place; the room lies to the right of the walk. */
export function wallFrom(x0: number, y0: number, x1: number, y1: number, id = 'wall'): Wall {
  const a = { x: x0, y: y0 };
  const b = { x: x1, y: y1 };
  const direction = directionTo(a, b);
  return { id, a, b, length: distance(a, b), direction, inward: rightOf(direction) };
}
