import { type Body, createBody, distanceBetweenConvex, isInside, isNearBounds, type Polygon, scale, translate } from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { FloorObstacle, PlacedRoom, PlacedThing } from '../types';

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
    const { moved, isInRoom } = floorBefore(placed, room.outline);
    const isFree = taken.every(({ owner, body }) => owner === moved.owner || !isTouching(body, moved.body));
    if (!isFree || !isInRoom) continue;
    rolledOut.push(moved);
    taken.push(moved);
  }
  return rolledOut;
}

/** The same floor while the cart stands where it does. */
const floorBefore = memoizeByIdentity(({ thing, polygon, front }: PlacedThing, outline: Polygon) => {
  const body = createBody(translate(polygon, scale(front, thing.depth)));
  const moved: RolledOut = { owner: thing.id, polygon: body.polygon, body };
  return { moved, isInRoom: isInside(outline, body.polygon) };
});

const isTouching = (one: Body, other: Body) =>
  isNearBounds(one.bounds, other.bounds) && distanceBetweenConvex(one.polygon, other.polygon) <= 0;
