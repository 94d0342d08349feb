import { type Bounds, squareBetweenBounds } from './bounds';
import { type Body, type Gap, gapBetween } from './passageBody';
import type { Polygon } from './points';
import { TOUCH } from './polygon';

/** Two bodies, by their numbers in a list, and the gap between them. */
export interface Pair {
  readonly i: number;
  readonly j: number;
  readonly pair: Gap;
}

/**
 * Gaps under a limit between the walls and obstacles of a room, narrowest first. On a floor one thing moves at a time: what the
 * last list for the same outline said of bodies that still stand is taken over, and only the gaps to the others are looked for.
 */
export function listGaps(room: Polygon, bodies: readonly Body[], limit: number): readonly Pair[] {
  const last = lastLists.get(room) ?? latest;
  const pairs = (last?.limit === limit ? updateGaps(last, bodies, limit) : null) ?? findGaps(bodies, limit);
  latest = { bodies, limit, pairs };
  lastLists.set(room, latest);
  return pairs;
}

interface GapList {
  bodies: readonly Body[];
  limit: number;
  pairs: readonly Pair[];
}

const lastLists = new WeakMap<Polygon, GapList>();
/** Of any outline: behind another door the same things stand. */
let latest: GapList | null = null;

/** Ties go by the bodies' order, so that a list never depends on what came before it. */
const byWidth = (a: Pair, b: Pair) => a.pair.distance - b.pair.distance || a.i - b.i || a.j - b.j;

// ---------------------------------------------------------------- from the last list

/** null where too little of it still stands, or stands in another order. */
function updateGaps(last: GapList, bodies: readonly Body[], limit: number): Pair[] | null {
  const now = renumber(last.bodies, bodies);
  if (now === null) return null;
  const kept: Pair[] = [];
  for (const old of last.pairs) {
    const i = now[old.i] as number;
    const j = now[old.j] as number;
    if (Math.min(i, j) >= 0) kept.push(i === old.i && j === old.j ? old : { i, j, pair: old.pair });
  }
  // The mark of a body that is kept is taken back: only those that are new still bear their number.
  for (const i of now) if (i >= 0) (bodies[i] as Body).mark = -1;
  const isKept = (i: number) => (bodies[i] as Body).mark < 0;
  const fresh: Pair[] = [];
  for (let i = 0; i < bodies.length; i++) {
    if (isKept(i)) continue;
    for (let j = 0; j < bodies.length; j++) if (j !== i && (j > i || isKept(j))) addPair(fresh, bodies, i, j, limit);
  }
  return merge(kept, fresh.sort(byWidth));
}

/** The number that each body has now, −1 for one that is gone; null unless at least half are left and in their old order. */
function renumber(before: readonly Body[], bodies: readonly Body[]): number[] | null {
  for (const body of before) body.mark = -1;
  for (let i = 0; i < bodies.length; i++) (bodies[i] as Body).mark = i;
  // A body that stands in the list twice bears the later number.
  if (bodies.some((body, i) => body.mark !== i)) return null;
  const now = before.map((body) => body.mark);
  let highest = -1;
  let left = 0;
  for (const number of now) {
    if (number < 0) continue;
    if (number <= highest) return null;
    highest = number;
    left += 1;
  }
  return 2 * left < bodies.length ? null : now;
}

function merge(one: readonly Pair[], other: readonly Pair[]): Pair[] {
  const merged: Pair[] = [];
  let k = 0;
  for (const pair of one) {
    while (k < other.length && byWidth(other[k] as Pair, pair) < 0) merged.push(other[k++] as Pair);
    merged.push(pair);
  }
  while (k < other.length) merged.push(other[k++] as Pair);
  return merged;
}

// ---------------------------------------------------------------- from nothing

/** Bodies are taken from left to right, so that most pairs are never looked at. */
function findGaps(bodies: readonly Body[], limit: number): Pair[] {
  const pairs: Pair[] = [];
  const order = bodies.map((_, i) => i).sort((a, b) => boundsAt(bodies, a).minX - boundsAt(bodies, b).minX);
  for (let k = 0; k < order.length; k++) {
    const one = order[k] as number;
    // A hair farther than the limit: what is just within it is for `addPair` to say, here as in a list that is taken over.
    const rightmost = boundsAt(bodies, one).maxX + limit + TOUCH;
    for (let l = k + 1; l < order.length; l++) {
      const other = order[l] as number;
      if (boundsAt(bodies, other).minX >= rightmost) break;
      addPair(pairs, bodies, one, other, limit);
    }
  }
  return pairs.sort(byWidth);
}

function addPair(pairs: Pair[], bodies: readonly Body[], one: number, other: number, limit: number): void {
  if (squareBetweenBounds(boundsAt(bodies, one), boundsAt(bodies, other)) >= limit * limit) return;
  const i = one < other ? one : other;
  const j = one < other ? other : one;
  const pair = gapBetween(bodies[i] as Body, bodies[j] as Body);
  if (pair.distance < limit) pairs.push({ i, j, pair });
}

const boundsAt = (bodies: readonly Body[], i: number): Bounds => (bodies[i] as Body).bounds;
