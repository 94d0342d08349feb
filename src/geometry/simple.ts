import { distance, type Polygon, type Segment } from './points';
import { edgesOf } from './polygon';
import { nearestBetweenSegments } from './segments';

/** Edges of a polygon that meet where they must not. */
export interface SelfCrossing {
  /** Indexes of the two edges; the edge i runs from corner i to the next. The same twice: the edge has no length. */
  readonly edges: readonly [number, number];
}

/** The first pair of edges that cross, touch or lie on each other, or an edge without length; null for a simple polygon. */
export function findSelfCrossing(polygon: Polygon): SelfCrossing | null {
  const edges = edgesOf(polygon);
  const empty = edges.findIndex(({ a, b }) => distance(a, b) === 0);
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
  return nearestBetweenSegments(s, r).distance === 0;
}

/** The second edge runs back along the first. */
function foldsBack(first: Segment, second: Segment): boolean {
  const [dx, dy, ex, ey] = [first.b.x - first.a.x, first.b.y - first.a.y, second.b.x - second.a.x, second.b.y - second.a.y];
  return dx * ey - dy * ex === 0 && dx * ex + dy * ey < 0;
}
