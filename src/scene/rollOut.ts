import { type Body, createBody, distanceBetweenConvex, isInside, isNearBounds, type Polygon, scale, translate } from '../geometry';
import type { FloorObstacle } from './floorObstacles';
import { memoizeByIdentity } from './memoizeByIdentity';
import type { PlacedRoom, PlacedThing } from './types';

/** A cart's floor when it is rolled out before its place. */
export interface RolledOut {
  owner: string;
  polygon: Polygon;
  body: Body;
}

/** Every cart that can be rolled out by its own depth, to its front: the floor there is free. One that blocks the next comes first. */
export function rollOut(carts: readonly PlacedThing[], obstacles: readonly FloorObstacle[], room: PlacedRoom): RolledOut[] {
  const rolledOut: RolledOut[] = [];
  const taken: (FloorObstacle | RolledOut)[] = [...obstacles];
  for (const placed of carts) {
    const { thing } = placed;
    const body = beforePlace(placed);
    const moved: RolledOut = { owner: thing.id, polygon: body.polygon, body };
    const isFree = taken.every((other) => other.owner === thing.id || !isTouching(other.body, body));
    if (!isFree || !isInRoom(placed, room.outline)) continue;
    rolledOut.push(moved);
    taken.push(moved);
  }
  return rolledOut;
}

/** The same floor while the cart stands where it does. */
const beforePlace = memoizeByIdentity(
  ({ thing, polygon, front }: PlacedThing): Body => createBody(translate(polygon, scale(front, thing.depth))),
);

const isInRoom = memoizeByIdentity((placed: PlacedThing, outline: Polygon) => isInside(outline, beforePlace(placed).polygon));

const isTouching = (one: Body, other: Body) =>
  isNearBounds(one.bounds, other.bounds) && distanceBetweenConvex(one.polygon, other.polygon) <= 0;
