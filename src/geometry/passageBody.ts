import { type Bounds, boundsOf } from './bounds';
import { nearestBetweenConvex } from './convexDistance';
import { midpoint, type Point, type Polygon, type Segment } from './points';
import { meanOf } from './polygon';

/** A wall or an obstacle as ways meet it. Of one polygon there is one body: on a floor one thing moves at a time, and the rest is known. */
export interface Body {
  readonly polygon: Polygon;
  /** A fixed inner point: ways through the body are counted from here. */
  readonly base: Point;
  readonly bounds: Bounds;
  readonly number: number;
  /** Gaps from this body to others, by their numbers. */
  readonly gaps: Map<number, Gap>;
}

/** The nearest points of two bodies. */
export type Gap = Segment & { distance: number };

const bodies = new WeakMap<Polygon, Body>();
const walls = new WeakMap<Point, Body>();
let count = 0;

export function obstacleBody(polygon: Polygon): Body {
  const known = bodies.get(polygon);
  if (known !== undefined) return known;
  const body = createBody(polygon);
  bodies.set(polygon, body);
  return body;
}

/** A wall is the same one while its two points are the same objects. */
export function wallBody({ a, b }: Segment): Body {
  const known = walls.get(a);
  if (known?.polygon[1] === b) return known;
  const body = createBody([a, b]);
  walls.set(a, body);
  return body;
}

function createBody(polygon: Polygon): Body {
  const base = polygon.length === 2 ? midpoint(polygon[0] as Point, polygon[1] as Point) : meanOf(polygon);
  count += 1;
  return { polygon, base, bounds: boundsOf(polygon), number: count, gaps: new Map() };
}

/** More gaps than any room has: what is left of bodies that are gone goes then. */
const MOST_GAPS = 500;

/** The gap between two bodies; `a` lies on the first. The other way round it is worked out anew, so that the last digits never depend on what came before. */
export function gapBetween(one: Body, other: Body): Gap {
  let gap = one.gaps.get(other.number);
  if (gap === undefined) {
    gap = nearestBetweenConvex(one.polygon, other.polygon);
    if (one.gaps.size >= MOST_GAPS) one.gaps.clear();
    one.gaps.set(other.number, gap);
  }
  return gap;
}
