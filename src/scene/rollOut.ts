import { add, type Bounds, boundsOf, distanceBetweenConvex, isInside, isNearBounds, type Polygon, scale } from '../geometry';
import type { FloorObstacle } from './floorObstacles';
import type { PlacedRoom, PlacedThing } from './types';

/** A cart's floor when it is rolled out before its place. */
export interface RolledOut {
  owner: string;
  polygon: Polygon;
}

/** Every cart that can be rolled out by its own depth, to its front: the floor there is free. One that blocks the next comes first. */
export function rollOut(carts: readonly PlacedThing[], obstacles: readonly FloorObstacle[], room: PlacedRoom): RolledOut[] {
  const rolledOut: RolledOut[] = [];
  const taken = obstacles.map(boxed);
  for (const { thing, polygon, front } of carts) {
    const moved = boxed({ owner: thing.id, polygon: polygon.map((p) => add(p, scale(front, thing.depth))) });
    const isFree = taken.every((other) => other.owner === thing.id || !isTouching(other, moved));
    if (!isFree || !isInside(room.outline, moved.polygon)) continue;
    rolledOut.push({ owner: thing.id, polygon: moved.polygon });
    taken.push(moved);
  }
  return rolledOut;
}

interface Boxed extends FloorObstacle {
  bounds: Bounds;
}

const boxed = ({ owner, polygon }: FloorObstacle): Boxed => ({ owner, polygon, bounds: boundsOf(polygon) });

const isTouching = (one: Boxed, other: Boxed) =>
  isNearBounds(one.bounds, other.bounds) && distanceBetweenConvex(one.polygon, other.polygon) <= 0;
