import { type Bounds, boundsOf } from './bounds';
import { nearestBetweenConvex } from './convexDistance';
import { distance, midpoint, type Point, type Polygon, type Segment } from './points';
import { containsPoint, edgesOf, meanOf } from './polygon';
import { nearestOnSegment } from './segments';

/** The widest way between two places, and where it is narrowest. */
export interface Passage {
  /** Diameter of the largest round body that can be carried from one place to the other, mm; 0 when they are cut off, Infinity when nothing stands about. */
  readonly width: number;
  /** The gap that decides; null when there is none. */
  readonly pinch: Segment | null;
}

/**
 * The widest passable width between two places in a room with convex obstacles: the largest w such
 * that the floor eroded by w/2 connects them.
 *
 * Exact for the pairwise gaps of walls and obstacles. Two places are cut off for a body of width w
 * when the obstacles whose gaps are narrower than w form a closed barrier around one of them. The
 * gaps are taken narrowest first; a union–find remembers for each obstacle the parity with which the
 * barrier that ties it to its root crosses a fixed way from one place to the other. The first gap
 * that closes a ring of odd parity separates the places: its width is the answer.
 *
 * The body must also fit where it stands: the width is never more than twice the clearance of
 * either place.
 */
export function solveWidestPassage(room: Polygon, obstacles: readonly Polygon[], from: Point, to: Point): Passage {
  const walls = edgesOf(room).map(({ a, b }) => [a, b] as Polygon);
  const bodies = [...walls, ...obstacles].map((polygon) => ({ polygon, base: baseOf(polygon), bounds: boundsOf(polygon) }));
  if (!containsPoint(room, from) || !containsPoint(room, to)) return { width: 0, pinch: null };
  const standing = [from, to].map((p) => measureClearance(bodies, p));
  const narrowest = standing.reduce((least, s) => (s.width < least.width ? s : least));
  const barrier = findBarrier(bodies, { a: from, b: to }, narrowest.width);
  return barrier && barrier.width < narrowest.width ? barrier : narrowest;
}

interface Body {
  polygon: Polygon;
  /** A fixed inner point: ways through the body are counted from here. */
  base: Point;
  bounds: Bounds;
}

const baseOf = (polygon: Polygon): Point => (polygon.length === 2 ? midpoint(polygon[0] as Point, polygon[1] as Point) : meanOf(polygon));

/** Twice the distance from a place to the nearest body; 0 inside one. */
function measureClearance(bodies: readonly Body[], p: Point): Passage {
  let best: Passage = { width: Infinity, pinch: null };
  for (const { polygon } of bodies) {
    if (polygon.length > 2 && containsPoint(polygon, p)) return { width: 0, pinch: { a: p, b: p } };
    for (const edge of edgesOf(polygon)) {
      const { point } = nearestOnSegment(p, edge);
      const width = 2 * distance(p, point);
      if (width < best.width) best = { width, pinch: { a: p, b: point } };
    }
  }
  return best;
}

interface Gap {
  i: number;
  j: number;
  pair: Segment & { distance: number };
}

/** Takes gaps narrowest first until they close a ring that the way from a to b crosses an odd number of times. */
function findBarrier(bodies: readonly Body[], way: Segment, limit: number): Passage | null {
  const ties = new ParityForest(bodies.length);
  for (const { i, j, pair } of listGaps(bodies, limit)) {
    const [one, other] = [bodies[i] as Body, bodies[j] as Body];
    const parity = countCrossings(way, [one.base, pair.a, pair.b, other.base]) % 2;
    if (ties.join(i, j, parity)) return { width: pair.distance, pinch: { a: pair.a, b: pair.b } };
  }
  return null;
}

function listGaps(bodies: readonly Body[], limit: number): Gap[] {
  const gaps: Gap[] = [];
  for (let i = 0; i < bodies.length; i++) {
    for (let j = i + 1; j < bodies.length; j++) {
      const [one, other] = [bodies[i] as Body, bodies[j] as Body];
      if (gapOfBounds(one.bounds, other.bounds) >= limit) continue;
      const pair = nearestBetweenConvex(one.polygon, other.polygon);
      if (pair.distance < limit) gaps.push({ i, j, pair });
    }
  }
  return gaps.sort((a, b) => a.pair.distance - b.pair.distance);
}

const gapOfBounds = (a: Bounds, b: Bounds): number =>
  Math.hypot(Math.max(0, a.minX - b.maxX, b.minX - a.maxX), Math.max(0, a.minY - b.maxY, b.minY - a.maxY));

/** Crossings of a polyline with the way. A point of the polyline on the way counts to one side of it, always the same. */
function countCrossings(way: Segment, path: readonly Point[]): number {
  let count = 0;
  for (let i = 1; i < path.length; i++) {
    if (isHalfOpenCrossing(way, { a: path[i - 1] as Point, b: path[i] as Point })) count++;
  }
  return count;
}

/** Like a proper crossing, but a leg that begins or ends on the way's line counts once over two legs, not twice or never. */
function isHalfOpenCrossing(way: Segment, leg: Segment): boolean {
  const side = (p: Point) => (way.b.x - way.a.x) * (p.y - way.a.y) - (way.b.y - way.a.y) * (p.x - way.a.x) >= 0;
  if (side(leg.a) === side(leg.b)) return false;
  // The leg crosses the way's line; it counts when it does so between the way's ends.
  const turn = (p: Point) => (leg.b.x - leg.a.x) * (p.y - leg.a.y) - (leg.b.y - leg.a.y) * (p.x - leg.a.x);
  return turn(way.a) >= 0 !== turn(way.b) >= 0;
}

/** Union–find that knows, for each member, the parity of the path to its root. */
class ParityForest {
  private readonly parent: number[];
  private readonly parity: number[];

  constructor(size: number) {
    this.parent = Array.from({ length: size }, (_, i) => i);
    this.parity = Array.from({ length: size }, () => 0);
  }

  /** Ties two members; true when they were tied already and the new tie closes a ring of odd parity. */
  join(i: number, j: number, parity: number): boolean {
    const [a, b] = [this.find(i), this.find(j)];
    const ring = (a.parity + b.parity + parity) % 2;
    if (a.root === b.root) return ring === 1;
    this.parent[b.root] = a.root;
    this.parity[b.root] = ring;
    return false;
  }

  private find(i: number): { root: number; parity: number } {
    const up = this.parent[i] as number;
    if (up === i) return { root: i, parity: 0 };
    const above = this.find(up);
    const parity = (above.parity + (this.parity[i] as number)) % 2;
    this.parent[i] = above.root;
    this.parity[i] = parity;
    return { root: above.root, parity };
  }
}
