import { cross, distance, dot, length, type Polygon, type Segment, sub } from './points';
import { edgesOf, TOUCH } from './polygon';
import { nearestBetweenSegments } from './segments';

/** Edges of a polygon that meet where they must not. */
export interface SelfCrossing {
  /** Indexes of the two edges; the edge i runs from corner i to the next. The same twice: the edge has no length. */
  readonly edges: readonly [number, number];
}

/**
 * The first pair of edges that cross, touch (come within `TOUCH`) or lie on each other, or an edge without
 * length; null for a simple polygon.
 */
export function findSelfCrossing(polygon: Polygon): SelfCrossing | null {
  const edges = edgesOf(polygon);
  const empty = edges.findIndex(({ a, b }) => distance(a, b) <= TOUCH);
  if (empty >= 0) return { edges: [empty, empty] };
  for (let i = 0; i < edges.length; i++) {
    for (let j = i + 1; j < edges.length; j++) {
      if (isBad(edges, i, j)) return { edges: [i, j] };
    }
  }
  return null;
}

export const isSimple = (polygon: Polygon): boolean => polygon.length >= 3 && findSelfCrossing(polygon) === null;

function isBad(edges: Segment[], i: number, j: number): boolean {
  const [s, r] = [edges[i] as Segment, edges[j] as Segment];
  if (j === i + 1) return foldsBack(s, r);
  if (i === 0 && j === edges.length - 1) return foldsBack(r, s);
  return nearestBetweenSegments(s, r).distance <= TOUCH;
}

/** The second edge runs back along the first, within `TOUCH` at the end of the shorter. */
function foldsBack(first: Segment, second: Segment): boolean {
  const [d, e] = [sub(first.b, first.a), sub(second.b, second.a)];
  return dot(d, e) < 0 && Math.abs(cross(d, e)) <= TOUCH * Math.max(length(d), length(e));
}
