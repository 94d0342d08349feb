import { squareToBounds } from './bounds';
import {
  type ClearanceCurve,
  distanceToCurve,
  eachClearanceCurve,
  eachCrossing,
  eachEnd,
  footPoint,
  segmentCurve,
} from './clearanceCurves';
import { isSameList } from './isSameList';
import type { Body } from './passageBody';
import { distance, type Point, type Polygon } from './points';
import { edgesOf, signedDistance, TOUCH } from './polygon';

export interface StandingSearch {
  /** Where the centre of the person may be: convex pieces. */
  readonly region: readonly Polygon[];
  readonly room: Polygon;
  readonly obstacles: readonly Body[];
  /** The place to be near. */
  readonly near: Point;
  /** Diameter of the person's circle, mm. */
  readonly width: number;
  /** How far from `near` to look, mm. */
  readonly within: number;
}

/** A place, and how far it is from where it was wanted. */
export interface StandingPlace {
  readonly centre: Point;
  readonly distance: number;
}

/**
 * The free place nearest to `near` where a person's circle fits: its centre in the region, the circle
 * inside the room and clear of obstacles; null when there is none within reach.
 *
 * Exact. The free places are bounded by edges of the region, by edges of bodies moved out by the
 * radius and by circles about their corners. The nearest free place is `near` itself, or the foot of
 * `near` on one of these curves, or an end of one or a point where two of them meet.
 */
export function findStandingPlace(search: StandingSearch): StandingPlace | null {
  const last = lately.get(search.room) ?? [];
  const known = last.find((answer) => stillHolds(answer, search));
  if (known !== undefined) return known.found;
  const found = searchStandingPlace(search);
  lately.set(search.room, [{ search, decisive: decisiveOf(search, found), found }, ...last.slice(0, MOST_ANSWERS - 1)]);
  return found;
}

// ---------------------------------------------------------------- from the last answers

/** An answer, and the obstacles that made it: one farther off than the found place and the circle about it takes no nearer place. */
interface Answer {
  search: StandingSearch;
  decisive: readonly Body[];
  found: StandingPlace | null;
}

/** So many searches are asked in one room again and again while something is moved in it. */
const MOST_ANSWERS = 8;
const lately = new WeakMap<Polygon, readonly Answer[]>();

function stillHolds({ search, decisive, found }: Answer, asked: StandingSearch): boolean {
  return (
    search.near.x === asked.near.x &&
    search.near.y === asked.near.y &&
    search.width === asked.width &&
    search.within === asked.within &&
    isSameRegion(search.region, asked.region) &&
    isSameList(decisive, decisiveOf(asked, found))
  );
}

const decisiveOf = ({ obstacles, near, width, within }: StandingSearch, found: StandingPlace | null): Body[] => {
  const reach = (found?.distance ?? within) + width / 2 + TOUCH;
  return obstacles.filter(({ bounds }) => squareToBounds(bounds, near) <= reach * reach);
};

const isSameRegion = (one: readonly Polygon[], other: readonly Polygon[]) =>
  isSameList(one, other, (a, b) => isSameList(a, b, (p, q) => p.x === q.x && p.y === q.y));

// ---------------------------------------------------------------- the search

function searchStandingPlace(search: StandingSearch): StandingPlace | null {
  const { near, within, width } = search;
  const inReach = search.obstacles.filter(({ polygon }) => signedDistance(polygon, near) <= within + width / 2);
  const isFree = createFreeTest(search, inReach);
  if (isFree(near)) return { centre: near, distance: 0 };
  // Close by there are few curves, and most places are found there.
  for (const reach of [within * CLOSE_BY, within]) {
    const close = inReach.filter(({ bounds }) => squareToBounds(bounds, near) <= (reach + width / 2) ** 2);
    const found = searchCurves(near, reach, curvesInReach(search, close, reach), isFree);
    if (found !== null) return found;
  }
  return null;
}

const CLOSE_BY = 0.5;

function searchCurves(
  near: Point,
  reach: number,
  curves: readonly CurveInReach[],
  isFree: (centre: Point) => boolean,
): StandingPlace | null {
  let best: StandingPlace | null = null;
  const consider = (centre: Point) => {
    const away = distance(near, centre);
    if ((best === null ? away <= reach : away < best.distance) && isFree(centre)) best = { centre, distance: away };
  };
  // From the nearest curve outward: no place on a curve is nearer than the curve, so what is left at the end can't better the best.
  for (let i = 0; i < curves.length; i++) {
    const { curve, away } = curves[i] as CurveInReach;
    if (best !== null && away >= (best as StandingPlace).distance) break;
    const foot = footPoint(near, curve);
    if (foot !== null) consider(foot);
    eachEnd(curve, consider);
    for (let j = 0; j < i; j++) eachCrossing((curves[j] as CurveInReach).curve, curve, consider);
  }
  return best;
}

/** A curve and the least distance from the wanted place to it. */
interface CurveInReach {
  curve: ClearanceCurve;
  away: number;
}

/** The nearest first. */
function curvesInReach({ region, room, near, width }: StandingSearch, obstacles: readonly Body[], reach: number): CurveInReach[] {
  const radius = width / 2;
  const curves: CurveInReach[] = [];
  const keep = (curve: ClearanceCurve) => {
    const away = distanceToCurve(near, curve);
    if (away <= reach) curves.push({ curve, away });
  };
  for (const piece of region) for (const edge of edgesOf(piece)) keep(segmentCurve(edge));
  eachClearanceCurve(room, radius, 'inside', keep);
  for (const { polygon } of obstacles) eachClearanceCurve(polygon, radius, 'outside', keep);
  return curves.sort((a, b) => a.away - b.away);
}

/**
 * Whether the circle fits about a place; touching is allowed, so that a place on a curve is free. The body that took the last
 * place is asked first: it mostly takes the next as well.
 */
function createFreeTest({ region, room, width }: StandingSearch, obstacles: readonly Body[]): (p: Point) => boolean {
  const radius = width / 2 - TOUCH;
  let last = 0;
  const isTaken = (i: number, p: Point) => signedDistance((obstacles[i] as Body).polygon, p) < radius;
  return (p) => {
    if (obstacles.length > 0 && isTaken(last, p)) return false;
    if (!region.some((piece) => signedDistance(piece, p) <= TOUCH) || signedDistance(room, p) > -radius) return false;
    const taker = obstacles.findIndex((_, i) => isTaken(i, p));
    if (taker < 0) return true;
    last = taker;
    return false;
  };
}
