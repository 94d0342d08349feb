import { cross, distance, dot, leftOf, lerp, normalize, type Point, type Polygon, rightOf, scale, sub } from './points';
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
    const da = dot(sub(a, at), normal);
    const db = dot(sub(b, at), normal);
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

/** How deep two convex polygons overlap: the least move that parts them; 0 when they only touch or are apart. */
export function penetration(
  a: Polygon,
  b: Polygon,
): { depth: number /** Unit direction in which `b` leaves `a` soonest. */; normal: Point } {
  let best = { depth: Infinity, normal: { x: 0, y: 0 } };
  for (const axis of [...axesOf(a), ...axesOf(b)]) {
    const [p, q] = [project(a, axis), project(b, axis)];
    const [ahead, back] = [p.max - q.min, q.max - p.min];
    const depth = Math.min(ahead, back);
    if (depth <= 0) return { depth: 0, normal: axis };
    if (depth < best.depth) best = { depth, normal: ahead <= back ? axis : scale(axis, -1) };
  }
  return best;
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

/** Unit normals of the edges; an edge without length has none. */
const axesOf = (polygon: Polygon): Point[] =>
  edgesOf(polygon)
    .filter(({ a, b }) => distance(a, b) > 0)
    .map(({ a, b }) => leftOf(normalize(sub(b, a))));

function project(polygon: Polygon, axis: Point): { min: number; max: number } {
  let min = Infinity;
  let max = -Infinity;
  for (const p of polygon) {
    const at = dot(p, axis);
    if (at < min) min = at;
    if (at > max) max = at;
  }
  return { min, max };
}
