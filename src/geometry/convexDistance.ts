import type { Point, Polygon, Segment } from './points';
import { edgesOf, signedDistance } from './polygon';
import { intersectSegments } from './segments';

/**
 * The nearest points of two convex shapes (`a` on the first, `b` on the second) and their distance. A shape of two
 * points is a segment, of one a point. Where they meet the distance is 0 and both points are one that they share.
 *
 * The loops work on numbers, not on points: a passage asks for some hundreds of these.
 */
export function nearestBetweenConvex(one: Polygon, other: Polygon): Segment & { distance: number } {
  if (!hasPartingLine(one, other) && !hasPartingLine(other, one)) {
    const shared = findSharedPoint(one, other);
    if (shared) return { a: shared, b: shared, distance: 0 };
  }
  return nearestApart(one, other);
}

/** The same of shapes that are known to be apart: then one of the two nearest points is a corner, of the first shape or of the second. */
export function nearestApart(one: Polygon, other: Polygon): Segment & { distance: number } {
  let least = Infinity;
  let corner = NOWHERE;
  let isOfOne = true;
  let edgeX = 0;
  let edgeY = 0;
  for (let turn = 0; turn < 2; turn++) {
    const corners = turn === 0 ? one : other;
    const shape = turn === 0 ? other : one;
    // A segment is one edge, not one there and one back.
    const edges = shape.length === 2 ? 1 : shape.length;
    for (let i = 0, j = shape.length - 1; i < edges; j = i++) {
      const q = shape[j] as Point;
      const r = shape[i] as Point;
      const dx = r.x - q.x;
      const dy = r.y - q.y;
      const size = dx * dx + dy * dy;
      for (let k = 0; k < corners.length; k++) {
        const p = corners[k] as Point;
        const part = size === 0 ? 0 : ((p.x - q.x) * dx + (p.y - q.y) * dy) / size;
        const t = part < 0 ? 0 : part > 1 ? 1 : part;
        const x = t === 1 ? r.x : q.x + dx * t;
        const y = t === 1 ? r.y : q.y + dy * t;
        const square = (p.x - x) * (p.x - x) + (p.y - y) * (p.y - y);
        if (square < least) {
          least = square;
          corner = p;
          isOfOne = turn === 0;
          edgeX = x;
          edgeY = y;
        }
      }
    }
  }
  const onEdge = { x: edgeX, y: edgeY };
  return isOfOne ? { a: corner, b: onEdge, distance: Math.sqrt(least) } : { a: onEdge, b: corner, distance: Math.sqrt(least) };
}

/** Of shapes without points. */
const NOWHERE: Point = { x: 0, y: 0 };

export const distanceBetweenConvex = (a: Polygon, b: Polygon): number => nearestBetweenConvex(a, b).distance;

/** Distance from a point to a convex polygon; 0 inside it. */
export const distanceBetweenPointAndConvex = (p: Point, polygon: Polygon): number => Math.max(0, signedDistance(polygon, p));

/** Whether a line along an edge of `of` (and for a segment also one across its ends) keeps the two shapes apart. */
function hasPartingLine(of: Polygon, from: Polygon): boolean {
  for (let i = 0, j = of.length - 1; i < of.length; j = i++) {
    const p = of[j] as Point;
    const q = of[i] as Point;
    const dx = q.x - p.x;
    const dy = q.y - p.y;
    if (isApartAlong(of, from, -dy, dx) || (of.length === 2 && isApartAlong(of, from, dx, dy))) return true;
  }
  return of.length === 1 && from.length === 1;
}

/** Whether the spans of the shapes along an axis do not meet. Measured from a corner, so that far from the origin no digits are lost. */
function isApartAlong(one: Polygon, other: Polygon, x: number, y: number): boolean {
  const o = one[0] as Point;
  let minOne = Infinity;
  let maxOne = -Infinity;
  let minOther = Infinity;
  let maxOther = -Infinity;
  for (let i = 0; i < one.length; i++) {
    const p = one[i] as Point;
    const at = (p.x - o.x) * x + (p.y - o.y) * y;
    minOne = Math.min(minOne, at);
    maxOne = Math.max(maxOne, at);
  }
  for (let i = 0; i < other.length; i++) {
    const p = other[i] as Point;
    const at = (p.x - o.x) * x + (p.y - o.y) * y;
    minOther = Math.min(minOther, at);
    maxOther = Math.max(maxOther, at);
  }
  return minOne > maxOther || minOther > maxOne;
}

/** A point of both shapes: a corner of one inside the other, or a crossing of edges; null when they meet only within rounding. */
function findSharedPoint(one: Polygon, other: Polygon): Point | null {
  const corner = one.find((p) => signedDistance(other, p) <= 0) ?? other.find((p) => signedDistance(one, p) <= 0);
  return corner ?? findCrossing(one, other);
}

function findCrossing(one: Polygon, other: Polygon): Point | null {
  const others = edgesOf(other);
  for (const edge of edgesOf(one)) {
    for (const against of others) {
      const met = intersectSegments(edge, against);
      if (met) return met;
    }
  }
  return null;
}
