import { clipHalfPlane } from './convex';
import { directionTo, distance, leftOf, type Point, type Polygon, type Segment, scale } from './points';
import { containsPoint, edgesOf, orient } from './polygon';
import { intersectSegments, nearestOnSegment } from './segments';

/** How far a convex piece reaches out of a simple outline. */
export interface Protrusion {
  /** mm; 0 when it is inside. */
  readonly by: number;
  /** The point that is farthest out, and the nearest point of the outline. */
  readonly place: Segment | null;
}

/**
 * The largest distance by which a convex piece lies outside a simple (also concave) outline. The
 * farthest point of a convex piece from the outline is one of its corners, or a point of an edge
 * that passes a corner of the outline; both are tried.
 */
export function measureProtrusion(outline: Polygon, piece: Polygon): Protrusion {
  let worst: Protrusion = { by: 0, place: null };
  for (const p of [...piece, ...pointsPastNotches(outline, piece)]) {
    if (containsPoint(outline, p)) continue;
    const nearest = nearestOnOutline(outline, p);
    const by = distance(p, nearest);
    if (by > worst.by) worst = { by, place: { a: p, b: nearest } };
  }
  return worst;
}

/** Whether a convex piece lies inside an outline, touching allowed. */
export const isInside = (outline: Polygon, piece: Polygon, tolerance = 1e-6): boolean => measureProtrusion(outline, piece).by <= tolerance;

/** The nearest point of an outline. */
export function nearestOnOutline(outline: Polygon, p: Point): Point {
  let best: Point | null = null;
  for (const edge of edgesOf(outline)) {
    const { point } = nearestOnSegment(p, edge);
    if (!best || distance(p, point) < distance(p, best)) best = point;
  }
  if (!best) throw new RangeError('an outline without points');
  return best;
}

/** Points in the middle of what a re-entrant corner of the outline cuts off the piece. */
function pointsPastNotches(outline: Polygon, piece: Polygon): Point[] {
  const walls = edgesOf(orient(outline));
  return walls.flatMap(({ a, b }, i) => {
    const hits = edgesOf(piece).flatMap((edge) => intersectSegments(edge, { a, b }) ?? []);
    if (hits.length === 0) return [];
    const before = walls[(i + walls.length - 1) % walls.length] as Segment;
    const outward = leftOf(directionTo(a, b));
    const cut = clipHalfPlane(piece, a, outward);
    const cutTwice = clipHalfPlane(cut, before.a, leftOf(directionTo(before.a, before.b)));
    return [...cutTwice, ...hits.map((hit) => ({ x: hit.x + scale(outward, 1e-3).x, y: hit.y + scale(outward, 1e-3).y }))];
  });
}
