import { cross, distance, lerp, normalize, type Point, type Polygon, rightOf, scale, sub } from './points';
import { area, edgesOf, orient } from './polygon';

/**
 * Convex polygons. Every function takes either direction of walking and keeps it in mind itself.
 */

/** The part of a polygon on the side of a line that `normal` points to: { p : (p − at)·normal ≥ 0 }. Exact for convex polygons. */
export function clipHalfPlane(polygon: Polygon, at: Point, normal: Point): Polygon {
  const kept: Point[] = [];
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i] as Point;
    const b = polygon[(i + 1) % polygon.length] as Point;
    const da = (a.x - at.x) * normal.x + (a.y - at.y) * normal.y;
    const db = (b.x - at.x) * normal.x + (b.y - at.y) * normal.y;
    if (da >= 0) kept.push(a);
    if (da >= 0 !== db >= 0) kept.push(lerp(a, b, da / (da - db)));
  }
  return kept;
}

/** Overlap of two convex polygons; empty when they do not meet. */
export function clipConvex(subject: Polygon, clip: Polygon): Polygon {
  let rest: Polygon = subject;
  for (const { a, b } of edgesOf(orient(clip))) {
    if (rest.length === 0) return [];
    rest = clipHalfPlane(rest, a, inwardOf(a, b));
  }
  return rest;
}

/** Area of the overlap of two convex polygons, mm². */
export const intersectionArea = (a: Polygon, b: Polygon): number => area(clipConvex(a, b));

/** How deep two convex polygons overlap: the least move that parts them, mm; 0 when they only touch or are apart. */
export const penetration = (a: Polygon, b: Polygon): number => leastDepth(b, a, leastDepth(a, b, Infinity));

/** Least overlap of the spans of two polygons along the normals of the first one's edges, no more than `least`; 0 where they are apart. */
function leastDepth(polygon: Polygon, other: Polygon, least: number): number {
  for (let i = 0; i < polygon.length && least > 0; i++) {
    const p = polygon[i] as Point;
    const q = polygon[(i + 1) % polygon.length] as Point;
    const size = distance(p, q);
    // An edge without length has no normal.
    if (size > 0) least = Math.min(least, overlapAlong(polygon, other, (q.y - p.y) / size, (p.x - q.x) / size));
  }
  return least;
}

function overlapAlong(one: Polygon, other: Polygon, x: number, y: number): number {
  let minOne = Infinity;
  let maxOne = -Infinity;
  let minOther = Infinity;
  let maxOther = -Infinity;
  for (const p of one) {
    const at = p.x * x + p.y * y;
    minOne = Math.min(minOne, at);
    maxOne = Math.max(maxOne, at);
  }
  for (const p of other) {
    const at = p.x * x + p.y * y;
    minOther = Math.min(minOther, at);
    maxOther = Math.max(maxOther, at);
  }
  return Math.max(0, Math.min(maxOne - minOther, maxOther - minOne));
}

/** Every edge moved outward by `by` (inward when negative) with sharp corners; empty when nothing is left. */
export function offsetConvex(polygon: Polygon, by: number): Polygon {
  const outline = orient(polygon);
  const edges = edgesOf(outline).filter(({ a, b }) => distance(a, b) > 0);
  const lines = edges.map(({ a, b }) => ({ at: sub(a, scale(inwardOf(a, b), by)), d: normalize(sub(b, a)), inward: inwardOf(a, b) }));
  if (by < 0) return lines.reduce<Polygon>((rest, { at, inward }) => clipHalfPlane(rest, at, inward), outline);
  return lines.map((line, i) => meet(lines[(i + lines.length - 1) % lines.length] as typeof line, line));
}

function meet(one: { at: Point; d: Point }, other: { at: Point; d: Point }): Point {
  const det = cross(one.d, other.d);
  if (Math.abs(det) < 1e-12) return other.at;
  const t = cross(sub(other.at, one.at), other.d) / det;
  return { x: one.at.x + one.d.x * t, y: one.at.y + one.d.y * t };
}

/** Unit normal into a polygon that is walked clockwise on the paper, along its edge from a to b. */
const inwardOf = (a: Point, b: Point): Point => rightOf(normalize(sub(b, a)));
