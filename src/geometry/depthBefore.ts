import { clipHalfPlane } from './convex';
import { along, directionTo, distance, dot, type Point, type Polygon, type Segment, scale, sub } from './points';

/**
 * How far out a convex piece begins in the strip before a face, along the face's unit normal; no less than `most` where it is not in
 * it or farther. What is in the strip by no more than `tolerance` counts as beside it.
 */
export function depthBefore(piece: Polygon, { a, b }: Segment, normal: Point, most: number, tolerance: number): number {
  const way = directionTo(a, b);
  const length = distance(a, b);
  let from = Number.POSITIVE_INFINITY;
  let near = Number.POSITIVE_INFINITY;
  let to = Number.NEGATIVE_INFINITY;
  let far = Number.NEGATIVE_INFINITY;
  for (const p of piece) {
    const t = (p.x - a.x) * way.x + (p.y - a.y) * way.y;
    const d = (p.x - a.x) * normal.x + (p.y - a.y) * normal.y;
    from = Math.min(from, t);
    to = Math.max(to, t);
    near = Math.min(near, d);
    far = Math.max(far, d);
  }
  // Most of what stands about is beside the strip, behind the face or farther than something else.
  if (to <= tolerance || from >= length - tolerance || far <= tolerance || near >= most) return most;
  if (near >= 0 && from >= 0 && to <= length) return near;
  const ahead = clipHalfPlane(piece, a, normal);
  const before = clipHalfPlane(clipHalfPlane(ahead, along(a, way, tolerance), way), along(b, way, -tolerance), scale(way, -1));
  return before.length === 0 ? most : Math.min(most, Math.max(0, Math.min(...before.map((p) => dot(sub(p, a), normal)))));
}

/** Floor before a face to a depth. */
export const floorBefore = ({ a, b }: Segment, normal: Point, depth: number): Polygon => [
  a,
  b,
  along(b, normal, depth),
  along(a, normal, depth),
];
