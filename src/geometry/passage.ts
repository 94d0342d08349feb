import { type Bounds, boundsOf } from './bounds';
import { nearestOnOutline } from './containment';
import { nearestBetweenConvex } from './convexDistance';
import { midpoint, type Point, type Polygon, type Segment } from './points';
import { containsPoint, edgesOf, meanOf, signedDistance, TOUCH } from './polygon';

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
 *
 * Widths from `enough` on are not told apart: any of them may be given, and the search is the shorter.
 */
export function solveWidestPassage(room: Polygon, obstacles: readonly Polygon[], from: Point, to: Point, enough = Infinity): Passage {
  const walls = edgesOf(room).map(({ a, b }) => [a, b] as Polygon);
  const bodies = [...walls, ...obstacles].map((polygon) => ({ polygon, base: baseOf(polygon), bounds: boundsOf(polygon) }));
  if (!containsPoint(room, from) || !containsPoint(room, to)) return { width: 0, pinch: null };
  const standing = [from, to].map((p) => measureClearance(bodies, p));
  const narrowest = standing.reduce((least, s) => (s.width < least.width ? s : least));
  return findBarrier(bodies, { a: from, b: to }, Math.min(narrowest.width, enough)) ?? narrowest;
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
  let nearest: Polygon | null = null;
  let least = Infinity;
  for (const { polygon } of bodies) {
    const away = signedDistance(polygon, p);
    if (polygon.length > 2 && away <= TOUCH) return { width: 0, pinch: { a: p, b: p } };
    if (away >= least) continue;
    nearest = polygon;
    least = away;
  }
  return nearest === null ? { width: Infinity, pinch: null } : { width: 2 * least, pinch: { a: p, b: nearestOnOutline(nearest, p) } };
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
    const parity = countCrossings(way, [(bodies[i] as Body).base, pair.a, pair.b, (bodies[j] as Body).base]) % 2;
    if (ties.join(i, j, parity)) return { width: pair.distance, pinch: { a: pair.a, b: pair.b } };
  }
  return null;
}

function listGaps(bodies: readonly Body[], limit: number): Gap[] {
  const gaps: Gap[] = [];
  for (let i = 0; i < bodies.length; i++) {
    for (let j = i + 1; j < bodies.length; j++) {
      const one = bodies[i] as Body;
      const other = bodies[j] as Body;
      if (gapOfBounds(one.bounds, other.bounds) >= limit) continue;
      const pair = nearestBetweenConvex(one.polygon, other.polygon);
      if (pair.distance < limit) gaps.push({ i, j, pair });
    }
  }
  return gaps.sort((a, b) => a.pair.distance - b.pair.distance);
}

function gapOfBounds(a: Bounds, b: Bounds): number {
  const x = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const y = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  return Math.sqrt(x * x + y * y);
}

/** Crossings of a polyline with the way. A point of the polyline on the way counts to one side of it, always the same. */
function countCrossings(way: Segment, path: readonly Point[]): number {
  let count = 0;
  for (let i = 1; i < path.length; i++) {
    if (isHalfOpenCrossing(way, path[i - 1] as Point, path[i] as Point)) count++;
  }
  return count;
}

/** Like a proper crossing, but a leg that begins or ends on the way's line counts once over two legs, not twice or never. */
function isHalfOpenCrossing(way: Segment, a: Point, b: Point): boolean {
  if (turnAt(way.a, way.b, a) >= 0 === turnAt(way.a, way.b, b) >= 0) return false;
  // The leg crosses the way's line; it counts when it does so between the way's ends.
  return turnAt(a, b, way.a) >= 0 !== turnAt(a, b, way.b) >= 0;
}

/** Positive where a walker from `a` to `b` turns clockwise to go on to `p`. */
const turnAt = (a: Point, b: Point, p: Point) => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

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
    const one = this.findRoot(i);
    const other = this.findRoot(j);
    const ring = (this.parityOf(i) + this.parityOf(j) + parity) % 2;
    if (one === other) return ring === 1;
    this.parent[other] = one;
    this.parity[other] = ring;
    return false;
  }

  /** Afterwards the member hangs on its root, and its parity is that of the way there. */
  private findRoot(i: number): number {
    const up = this.parent[i] as number;
    if (up === i) return i;
    const root = this.findRoot(up);
    this.parity[i] = (this.parityOf(i) + this.parityOf(up)) % 2;
    this.parent[i] = root;
    return root;
  }

  private parityOf(i: number): number {
    return this.parity[i] as number;
  }
}
