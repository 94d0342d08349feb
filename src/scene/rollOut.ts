import { type Body, createBody, distanceBetweenConvex, isInside, isNearBounds, type Polygon, scale, translate } from '../geometry';
import { createListMap } from './memoizeByIdentity';
import type { FloorObstacle, PlacedRoom, PlacedThing } from './types';

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
  const before = bodiesBefore(carts, undefined);
  for (const [i, placed] of carts.entries()) {
    const { thing } = placed;
    const body = before[i] as Body;
    const moved: RolledOut = { owner: thing.id, polygon: body.polygon, body };
    const isFree = taken.every((other) => other.owner === thing.id || !isTouching(other.body, body));
    if (!isFree || !isInside(room.outline, body.polygon)) continue;
    rolledOut.push(moved);
    taken.push(moved);
  }
  return rolledOut;
}

/** Of each cart; the same floor while it stands where it does. */
const bodiesBefore = createListMap(
  ({ thing, polygon, front }: PlacedThing): Body => createBody(translate(polygon, scale(front, thing.depth))),
);

const isTouching = (one: Body, other: Body) =>
  isNearBounds(one.bounds, other.bounds) && distanceBetweenConvex(one.polygon, other.polygon) <= 0;
