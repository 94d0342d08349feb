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
/** By the corner where they begin. */
const wallsFrom = new WeakMap<Point, Body>();

/** The walls of a room, as long as its outline is the same object; those between the same corners are the same in another outline. */
export function wallBodies(room: Polygon): readonly Body[] {
  const known = walls.get(room);
  if (known !== undefined) return known;
  const found: Body[] = [];
  for (let i = 0; i < room.length; i++) found.push(wallBetween(room[i] as Point, room[(i + 1) % room.length] as Point));
  walls.set(room, found);
  return found;
}

function wallBetween(a: Point, b: Point): Body {
  const known = wallsFrom.get(a);
  if (known !== undefined && known.polygon[1] === b) return known;
  const made = createBody([a, b]);
  wallsFrom.set(a, made);
  return made;
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
