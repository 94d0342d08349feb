import {
  clipHalfPlane,
  containsPoint,
  directionTo,
  distance,
  distanceToOutline,
  dot,
  type Point,
  type Polygon,
  type Segment,
  scale,
  sub,
} from '../geometry';

/** Points closer than this along the side belong to the same end. */
const SAME = 1e-6;

/**
 * How far a convex outline lies outside a side: from every point of the edge along its outward
 * normal to where the outline ends, the least of all. Where the outline is narrower than the edge,
 * the uncovered end counts by its distance from the outline, below zero.
 *
 * Exact: what the outline reaches is a concave function along the edge, so its least value lies at an
 * end of the stretch that is covered, and the distance from a convex outline is greatest at an end of
 * what is not.
 */
export function measureOverhang(outline: Polygon, edge: Segment, normal: Point): number {
  const along = directionTo(edge.a, edge.b);
  const before = clipHalfPlane(outline, edge.a, along);
  const covered = clipHalfPlane(before, edge.b, scale(along, -1)).map((p) => ({
    at: dot(sub(p, edge.a), along),
    out: dot(sub(p, edge.a), normal),
  }));
  const [from, to] = [Math.min(...covered.map(({ at }) => at)), Math.max(...covered.map(({ at }) => at))];
  const reachAt = (place: number) => Math.max(...covered.filter(({ at }) => Math.abs(at - place) <= SAME).map(({ out }) => out));
  const uncovered = [...(from > SAME ? [edge.a] : []), ...(to < distance(edge.a, edge.b) - SAME ? [edge.b] : [])];
  return Math.min(...(covered.length === 0 ? [] : [reachAt(from), reachAt(to)]), ...uncovered.map((p) => -distanceFrom(outline, p)));
}

const distanceFrom = (outline: Polygon, p: Point) => (containsPoint(outline, p) ? 0 : distanceToOutline(outline, p));
