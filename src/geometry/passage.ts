import { squareToBounds } from './bounds';
import { nearestOnOutline } from './containment';
import { type Body, wallBodies } from './passageBody';
import { listGaps, type Pair } from './passageGaps';
import type { Point, Polygon, Segment } from './points';
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
 * gaps are taken narrowest first; a union–find remembers for each obstacle how often, odd or even, the
 * barrier that ties it to its root crosses a ray from each place. A ring that crosses a place's ray an odd
 * number of times goes around it: the first ring around one place and not the other separates them, and
 * the width of the gap that closed it is the answer.
 *
 * The body must also fit where it stands: the width is never more than twice the clearance of
 * either place.
 *
 * Widths from `enough` on are not told apart: any of them may be given, and the search is the shorter.
 */
export function solveWidestPassage(room: Polygon, obstacles: readonly Body[], from: Point, to: Point, enough = Infinity): Passage {
  if (!containsPoint(room, from) || !containsPoint(room, to)) return CLOSED;
  const bodies = bodiesOf(room, obstacles);
  const narrowest = narrower(measureClearance(bodies, from), measureClearance(bodies, to));
  // A list up to `enough` serves again when things have moved, however wide it was where people stood.
  const gaps = listGaps(room, bodies, enough === Infinity ? narrowest.width : enough);
  const found = findBarriers(bodies, gaps, [from, to])(0, 1);
  return found !== null && found.width < narrowest.width ? found : narrowest;
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
export function createPassageSearch(room: Polygon, obstacles: readonly Body[], enough = Infinity): PassageSearch {
  const bodies = bodiesOf(room, obstacles);
  const gaps = listGaps(room, bodies, enough);
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

const bodiesOf = (room: Polygon, obstacles: readonly Body[]): Body[] => wallBodies(room).concat(obstacles);

/** Twice the distance from a place to the nearest body; 0 inside one. */
function measureClearance(bodies: readonly Body[], p: Point): Passage {
  let nearest: Polygon | null = null;
  let least = Infinity;
  for (let i = 0; i < bodies.length; i++) {
    const { polygon, bounds } = bodies[i] as Body;
    if (squareToBounds(bounds, p) > least * least) continue;
    const away = signedDistance(polygon, p);
    if (polygon.length > 2 && away <= TOUCH) return { width: 0, pinch: { a: p, b: p } };
    if (away >= least) continue;
    nearest = polygon;
    least = away;
  }
  return nearest === null ? { width: Infinity, pinch: null } : { width: 2 * least, pinch: { a: p, b: nearestOnOutline(nearest, p) } };
}

/**
 * Takes gaps narrowest first. Each that closes a ring parts the places inside it from those outside. Tells of two places the
 * first gap that parted them; null where none did.
 */
function findBarriers(bodies: readonly Body[], gaps: readonly Pair[], places: readonly Point[]): (i: number, j: number) => Passage | null {
  const parted: { inside: number; passage: Passage }[] = [];
  const everywhere = -1 >>> (32 - places.length);
  const bases = bodies.map(({ base }) => base);
  const above = bases.map(({ y }) => placesAbove(places, y));
  const ties = new ParityForest(bodies.length);
  for (const { i, j, pair } of places.length < 2 ? [] : gaps) {
    const { a, b } = pair;
    const aboveA = placesAbove(places, a.y);
    const aboveB = placesAbove(places, b.y);
    const crossed =
      raysCrossed(places, bases[i] as Point, a, (above[i] as number) ^ aboveA) ^
      raysCrossed(places, a, b, aboveA ^ aboveB) ^
      raysCrossed(places, b, bases[j] as Point, aboveB ^ (above[j] as number));
    const inside = ties.join(i, j, crossed);
    if (inside === 0 || inside === everywhere) continue;
    parted.push({ inside, passage: { width: pair.distance, pinch: { a, b } } });
    if (places.length === 2) break;
  }
  return (i, j) => parted.find(({ inside }) => ((inside >> i) & 1) !== ((inside >> j) & 1))?.passage ?? null;
}

/** Bits of the places that lie above a height on the paper. */
function placesAbove(places: readonly Point[], y: number): number {
  let bits = 0;
  for (let k = 0; k < places.length; k++) if ((places[k] as Point).y < y) bits |= 1 << k;
  return bits;
}

/** Of places whose height lies between the ends of a leg: bits of those whose ray to the right the leg crosses. */
function raysCrossed(places: readonly Point[], from: Point, to: Point, between: number): number {
  let bits = 0;
  for (let left = between; left !== 0; left &= left - 1) {
    const k = 31 - Math.clz32(left & -left);
    const { x, y } = places[k] as Point;
    if (from.x + ((y - from.y) * (to.x - from.x)) / (to.y - from.y) > x) bits |= 1 << k;
  }
  return bits;
}

/** Union–find that knows, for each member, the parities of the path to its root: a bit for each place whose ray it crosses. */
class ParityForest {
  private readonly parent: number[] = [];
  private readonly parities: number[] = [];

  constructor(size: number) {
    for (let i = 0; i < size; i++) {
      this.parent.push(i);
      this.parities.push(0);
    }
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
