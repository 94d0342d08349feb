import { type Bounds, distanceBetweenConvex, isInside, isNearBounds, obstacleBody, type Polygon, scale, translate } from '../geometry';
import type { FloorObstacle } from './floorObstacles';
import { memoizeByIdentity } from './memoizeByIdentity';
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
  for (const placed of carts) {
    const { thing } = placed;
    const moved = boxed({ owner: thing.id, polygon: beforePlace(placed) });
    const isFree = taken.every((other) => other.owner === thing.id || !isTouching(other, moved));
    if (!isFree || !isInRoom(placed, room.outline)) continue;
    rolledOut.push({ owner: thing.id, polygon: moved.polygon });
    taken.push(moved);
  }
  return rolledOut;
}

/** The same floor while the cart stands where it does. */
const beforePlace = memoizeByIdentity(({ thing, polygon, front }: PlacedThing): Polygon => translate(polygon, scale(front, thing.depth)));

const isInRoom = memoizeByIdentity((placed: PlacedThing, outline: Polygon) => isInside(outline, beforePlace(placed)));

interface Boxed extends RolledOut {
  bounds: Bounds;
}

const boxed = ({ owner, polygon }: RolledOut): Boxed => ({ owner, polygon, bounds: obstacleBody(polygon).bounds });

const isTouching = (one: Boxed, other: Boxed) =>
  isNearBounds(one.bounds, other.bounds) && distanceBetweenConvex(one.polygon, other.polygon) <= 0;
