import type { Bounds } from './bounds';
import { nearestOnOutline } from './containment';
import { type Body, type Gap, gapBetween, obstacleBody, wallBodies } from './passageBody';
import { type Point, type Polygon, type Segment } from './points';
import { containsPoint, signedDistance, TOUCH } from './polygon';

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
  if (!containsPoint(room, from) || !containsPoint(room, to)) return CLOSED;
  const bodies = bodiesOf(room, obstacles);
  const narrowest = narrower(measureClearance(bodies, from), measureClearance(bodies, to));
  return findBarriers(bodies, listGaps(bodies, Math.min(narrowest.width, enough)), [from, to])(0, 1) ?? narrowest;
}

/** Bits of a word, less its sign. */
export const MOST_PLACES = 31;

/** The widest ways of one floor: its gaps are looked at once, for all places and for every choice of what stands there. */
export interface PassageSearch {
  /**
   * The widest way between any two of at most 31 places. A ring of gaps parts at once all places that lie in it from all that
   * do not. `stands` says which obstacles are there; all when it is left out. A place with `room` about it makes no way
   * narrower: so much is enough to stand, however wide the way there is.
   */
  solve: (places: readonly Point[], stands?: (obstacle: number) => boolean, room?: number) => (i: number, j: number) => Passage;
}

/** As `solveWidestPassage`, for several places, or for the same floor with and without some of its obstacles. */
export function createPassageSearch(room: Polygon, obstacles: readonly Polygon[], enough = Infinity): PassageSearch {
  const bodies = bodiesOf(room, obstacles);
  const gaps = listGaps(bodies, enough);
  const walls = bodies.length - obstacles.length;
  return {
    solve: (places, stands = () => true, roomy = Infinity) => {
      if (places.length > MOST_PLACES) throw new RangeError(`at most ${MOST_PLACES} places`);
      const isThere = bodies.map((_, i) => i < walls || stands(i - walls));
      const present = bodies.filter((_, i) => isThere[i]);
      const standing = places.map((p) => {
        const clearance = containsPoint(room, p) ? measureClearance(present, p) : CLOSED;
        return clearance.width >= roomy - TOUCH ? OPEN : clearance;
      });
      const left = gaps.filter(({ i, j }) => isThere[i] && isThere[j]);
      const barrier = findBarriers(bodies, left, places);
      return (i, j) => {
        const narrowest = narrower(standing[i] ?? CLOSED, standing[j] ?? CLOSED);
        const found = barrier(i, j);
        return found !== null && found.width < narrowest.width ? found : narrowest;
      };
    },
  };
}

const CLOSED: Passage = { width: 0, pinch: null };
const OPEN: Passage = { width: Infinity, pinch: null };

const narrower = (one: Passage, other: Passage): Passage => (other.width < one.width ? other : one);

const bodiesOf = (room: Polygon, obstacles: readonly Polygon[]): Body[] => [...wallBodies(room), ...obstacles.map(obstacleBody)];

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

interface Pair {
  i: number;
  j: number;
  pair: Gap;
}

/**
 * Takes gaps narrowest first. Each that closes a ring parts the places that the ways from the first place to them cross an
 * odd number of times from the others. Tells of two places the first gap that parted them; null where none did.
 */
function findBarriers(bodies: readonly Body[], gaps: readonly Pair[], places: readonly Point[]): (i: number, j: number) => Passage | null {
  const [first, ...others] = places;
  const parted: { sides: number; passage: Passage }[] = [];
  if (first === undefined || others.length === 0) return () => null;
  const ways = others.map((place) => ({ a: first, b: place }));
  const at = (body: number) => (bodies[body] as Body).base;
  const ties = new ParityForest(bodies.length);
  const basesLeft = ways.map((way) => bodies.map(({ base }) => isLeftOf(way, base)));
  for (const { i, j, pair } of gaps) {
    let crossed = 0;
    for (let k = 0; k < ways.length; k++) {
      const isLeft = basesLeft[k] as boolean[];
      if (isCrossedOddly(ways[k] as Segment, pair, at(i), at(j), isLeft[i] === true, isLeft[j] === true)) crossed |= 1 << k;
    }
    const sides = ties.join(i, j, crossed);
    if (sides === 0) continue;
    parted.push({ sides, passage: { width: pair.distance, pinch: { a: pair.a, b: pair.b } } });
    if (others.length === 1) break;
  }
  const sideOf = (sides: number, place: number) => (place === 0 ? 0 : (sides >> (place - 1)) & 1);
  return (i, j) => parted.find(({ sides }) => sideOf(sides, i) !== sideOf(sides, j))?.passage ?? null;
}

/** Gaps under the limit, narrowest first. Bodies are taken from left to right, so that most pairs are never looked at. */
function listGaps(bodies: readonly Body[], limit: number): Pair[] {
  const pairs: Pair[] = [];
  const order = bodies.map((_, i) => i).sort((a, b) => boundsAt(bodies, a).minX - boundsAt(bodies, b).minX);
  for (let k = 0; k < order.length; k++) {
    const one = order[k] as number;
    const bounds = boundsAt(bodies, one);
    for (let l = k + 1; l < order.length; l++) {
      const other = order[l] as number;
      if (boundsAt(bodies, other).minX - bounds.maxX >= limit) break;
      if (isFarApart(bounds, boundsAt(bodies, other), limit)) continue;
      const [i, j] = one < other ? [one, other] : [other, one];
      const pair = gapBetween(bodies[i] as Body, bodies[j] as Body);
      if (pair.distance < limit) pairs.push({ i, j, pair });
    }
  }
  return pairs.sort((a, b) => a.pair.distance - b.pair.distance || a.i - b.i || a.j - b.j);
}

const boundsAt = (bodies: readonly Body[], i: number): Bounds => (bodies[i] as Body).bounds;

function isFarApart(a: Bounds, b: Bounds, limit: number): boolean {
  const x = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const y = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  return x * x + y * y >= limit * limit;
}

/**
 * Whether the path from one body's base over the gap to the other's crosses a way an odd number of times. A point of the path
 * on the way counts to one side of it, always the same: so a leg that begins or ends there counts once over two legs.
 */
function isCrossedOddly(way: Segment, { a, b }: Segment, from: Point, to: Point, isFromLeft: boolean, isToLeft: boolean): boolean {
  const isALeft = isLeftOf(way, a);
  const isBLeft = isLeftOf(way, b);
  let isOdd = isFromLeft !== isALeft && isBetweenEnds(way, from, a);
  if (isALeft !== isBLeft && isBetweenEnds(way, a, b)) isOdd = !isOdd;
  if (isBLeft !== isToLeft && isBetweenEnds(way, b, to)) isOdd = !isOdd;
  return isOdd;
}

const isLeftOf = ({ a, b }: Segment, p: Point) => turnAt(a, b, p) >= 0;

/** Whether a leg that crosses the way's line does so between the way's ends. */
const isBetweenEnds = (way: Segment, a: Point, b: Point) => turnAt(a, b, way.a) >= 0 !== turnAt(a, b, way.b) >= 0;

/** Positive where a walker from `a` to `b` turns clockwise to go on to `p`. */
const turnAt = (a: Point, b: Point, p: Point) => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

/** Union–find that knows, for each member, the parities of the path to its root: a bit for each way. */
class ParityForest {
  private readonly parent: number[];
  private readonly parities: number[];

  constructor(size: number) {
    this.parent = Array.from({ length: size }, (_, i) => i);
    this.parities = Array.from({ length: size }, () => 0);
  }

  /** Ties two members. Where they were tied already the new tie closes a ring: the parities of the ring, else 0. */
  join(i: number, j: number, parities: number): number {
    const one = this.findRoot(i);
    const other = this.findRoot(j);
    const ring = this.paritiesOf(i) ^ this.paritiesOf(j) ^ parities;
    if (one === other) return ring;
    this.parent[other] = one;
    this.parities[other] = ring;
    return 0;
  }

  /** Afterwards the member hangs on its root, and its parities are those of the way there. */
  private findRoot(i: number): number {
    const up = this.parent[i] as number;
    if (up === i) return i;
    const root = this.findRoot(up);
    this.parities[i] = this.paritiesOf(i) ^ this.paritiesOf(up);
    this.parent[i] = root;
    return root;
  }

  private paritiesOf(i: number): number {
    return this.parities[i] as number;
  }
}
