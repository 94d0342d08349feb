import { add, boundsOf, distanceBetweenConvex, isInside, isNearBounds, type Polygon, scale } from '../geometry';
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
  for (const { thing, polygon, front } of carts) {
    const moved = polygon.map((p) => add(p, scale(front, thing.depth)));
    const isFree = [...obstacles, ...rolledOut].every((other) => other.owner === thing.id || !isTouching(other.polygon, moved));
    if (isFree && isInside(room.outline, moved)) rolledOut.push({ owner: thing.id, polygon: moved });
  }
  return rolledOut;
}

const isTouching = (one: Polygon, other: Polygon) => isNearBounds(boundsOf(one), boundsOf(other)) && distanceBetweenConvex(one, other) <= 0;
