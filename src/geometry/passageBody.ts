import { type Bounds, boundsOf, squareBetweenBounds } from './bounds';
import { nearestApart, nearestBetweenConvex } from './convexDistance';
import { midpoint, type Point, type Polygon, type Segment } from './points';
import { meanOf } from './polygon';

/**
 * A wall or an obstacle, convex, as ways and places to stand meet it. What stands still keeps its body: on a floor one thing moves at
 * a time, and the gaps between the rest are known.
 */
export interface Body {
  readonly polygon: Polygon;
  /** A fixed inner point: ways through the body are counted from here. */
  readonly base: Point;
  readonly bounds: Bounds;
  /** Where it stands in the list that is looked at; a note of that moment alone. */
  mark: number;
}

/** The nearest points of two bodies. */
export type Gap = Segment & { distance: number };

const walls = new WeakMap<Polygon, readonly Body[]>();
let latest: readonly Body[] = [];

/** The walls of a room, as long as its outline is the same object; those between the same corners are the same in the next outline. */
export function wallBodies(room: Polygon): readonly Body[] {
  const known = walls.get(room);
  if (known !== undefined) return known;
  const found: Body[] = [];
  for (let i = 0; i < room.length; i++) {
    const a = room[i] as Point;
    const b = room[(i + 1) % room.length] as Point;
    found.push(latest.find(({ polygon }) => polygon[0] === a && polygon[1] === b) ?? createBody([a, b]));
  }
  walls.set(room, found);
  latest = found;
  return found;
}

export function createBody(polygon: Polygon): Body {
  const base = polygon.length === 2 ? midpoint(polygon[0] as Point, polygon[1] as Point) : meanOf(polygon);
  return { polygon, base, bounds: boundsOf(polygon), mark: -1 };
}

/** The gap between two bodies; `a` lies on the first. */
export const gapBetween = (one: Body, other: Body): Gap =>
  squareBetweenBounds(one.bounds, other.bounds) > 0
    ? nearestApart(one.polygon, other.polygon)
    : nearestBetweenConvex(one.polygon, other.polygon);
