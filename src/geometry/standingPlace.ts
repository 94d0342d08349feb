import { type ClearanceCurve, clearanceCurvesOf, crossCurves, distanceToCurve, footPoints, segmentCurve } from './clearanceCurves';
import { distance, type Point, type Polygon } from './points';
import { edgesOf, signedDistance, TOUCH } from './polygon';

export interface StandingSearch {
  /** Where the centre of the person may be: convex pieces. */
  readonly region: readonly Polygon[];
  readonly room: Polygon;
  /** Convex. */
  readonly obstacles: readonly Polygon[];
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
 * `near` on one of these curves, or a point where two of them meet.
 */
export function findStandingPlace(search: StandingSearch): StandingPlace | null {
  const { near, within } = search;
  const isFree = createFreeTest(search);
  if (isFree(near)) return { centre: near, distance: 0 };
  const curves = curvesOf(search);
  const foot = nearestFree(
    curves.flatMap((curve) => footPoints(near, curve)),
    near,
    within,
    isFree,
  );
  // Only a meeting that is nearer than the best foot can better it.
  const meeting = nearestFree(listMeetings(curves, near, foot?.distance ?? within), near, foot?.distance ?? within, isFree);
  return meeting ?? foot;
}

function curvesOf({ region, room, obstacles, near, width, within }: StandingSearch): ClearanceCurve[] {
  const radius = width / 2;
  return [
    ...region.flatMap((piece) => edgesOf(piece).map(segmentCurve)),
    ...clearanceCurvesOf(room, radius, 'inside'),
    ...obstacles.flatMap((body) => clearanceCurvesOf(body, radius, 'outside')),
  ].filter((curve) => distanceToCurve(near, curve) <= within);
}

function listMeetings(curves: readonly ClearanceCurve[], near: Point, within: number): Point[] {
  const inReach = curves.filter((curve) => distanceToCurve(near, curve) < within);
  const meetings: Point[] = [];
  for (const [i, one] of inReach.entries()) {
    for (let j = i + 1; j < inReach.length; j++) meetings.push(...crossCurves(one, inReach[j] as ClearanceCurve));
  }
  return meetings;
}

/** The nearest of some places that is free; the first of equally near ones. */
function nearestFree(places: readonly Point[], near: Point, within: number, isFree: (p: Point) => boolean): StandingPlace | null {
  const inReach: StandingPlace[] = [];
  for (const centre of places) {
    const away = distance(near, centre);
    if (away <= within) inReach.push({ centre, distance: away });
  }
  return inReach.sort((a, b) => a.distance - b.distance).find(({ centre }) => isFree(centre)) ?? null;
}

/** Whether the circle fits about a place; touching is allowed, so that a place on a curve is free. */
function createFreeTest({ region, room, obstacles, width, near, within }: StandingSearch): (p: Point) => boolean {
  const radius = width / 2 - TOUCH;
  const inReach = obstacles.filter((body) => signedDistance(body, near) < within + radius);
  return (p) =>
    region.some((piece) => signedDistance(piece, p) <= TOUCH) &&
    signedDistance(room, p) <= -radius &&
    inReach.every((body) => signedDistance(body, p) >= radius);
}
