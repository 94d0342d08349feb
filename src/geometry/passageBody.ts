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
  /** Gaps to other bodies, by their numbers. */
  readonly gaps: Map<number, Gap>;
}

/** The nearest points of two bodies: `a` on the one with the lower number. */
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

/** The gap between two bodies; `a` lies on the first. */
export function gapBetween(one: Body, other: Body): Gap {
  const [low, high] = one.number < other.number ? [one, other] : [other, one];
  let gap = low.gaps.get(high.number);
  if (gap === undefined) {
    gap = nearestBetweenConvex(low.polygon, high.polygon);
    if (low.gaps.size >= MOST_GAPS) low.gaps.clear();
    low.gaps.set(high.number, gap);
  }
  return low === one ? gap : { a: gap.b, b: gap.a, distance: gap.distance };
}
