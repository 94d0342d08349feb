import { clipHalfPlane, directionTo, distanceBetweenConvex, dot, type Point, type Polygon, type Segment, scale, sub } from '../../geometry';

/** Points closer than this along the side belong to the same end. */
const SAME = 1e-6;

/**
 * How far a convex outline lies outside a side: from every point of the edge along its outward
 * normal to where the outline ends, the least of all; negative where it ends short of the side.
 *
 * Exact: what the outline reaches is a concave function along the edge, so its least value lies at an
 * end of the stretch that it covers. An end of the edge that is left bare is no shortage of this side
 * but of the next one, whose overhang is then negative.
 */
export function measureOverhang(outline: Polygon, edge: Segment, normal: Point): number {
  const way = directionTo(edge.a, edge.b);
  const before = clipHalfPlane(clipHalfPlane(outline, edge.a, way), edge.b, scale(way, -1));
  if (before.length === 0) return -distanceBetweenConvex([edge.a, edge.b], outline);
  const covered = before.map((p) => ({ at: dot(sub(p, edge.a), way), out: dot(sub(p, edge.a), normal) }));
  const places = covered.map(({ at }) => at);
  const reachAt = (place: number) => Math.max(...covered.filter(({ at }) => Math.abs(at - place) <= SAME).map(({ out }) => out));
  return Math.min(reachAt(Math.min(...places)), reachAt(Math.max(...places)));
}
