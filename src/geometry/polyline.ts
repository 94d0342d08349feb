import { angleOf, differenceDeg } from './angles';
import { along, cross, directionTo, distance, dot, type Point, type Polygon, rightOf, sub } from './points';
import { intersectSegments, nearestOnSegment } from './segments';

/** A path of straight legs through its points. */
export type Polyline = readonly Point[];

export const pathLength = (path: Polyline): number => legsOf(path).reduce((sum, { length }) => sum + length, 0);

/** A straight stretch of a path, and where it begins along it. */
export interface Leg {
  readonly a: Point;
  readonly b: Point;
  readonly direction: Point;
  readonly length: number;
  readonly from: number;
}

export function legsOf(path: Polyline): Leg[] {
  const legs: Leg[] = [];
  let from = 0;
  for (let i = 1; i < path.length; i++) {
    const a = path[i - 1] as Point;
    const b = path[i] as Point;
    const length = distance(a, b);
    legs.push({ a, b, direction: directionTo(a, b), length, from });
    from += length;
  }
  return legs;
}

/** The point at `s` along a path with its direction; before the start and past the end the outer legs go on straight. */
export function pointAt(path: Polyline, s: number): { point: Point; direction: Point } {
  if (path.length < 2) throw new RangeError('a path needs two points');
  let from = 0;
  let i = 1;
  for (; i < path.length - 1; i++) {
    const length = distance(path[i - 1] as Point, path[i] as Point);
    if (s <= from + length) break;
    from += length;
  }
  const a = path[i - 1] as Point;
  const direction = directionTo(a, path[i] as Point);
  return { point: along(a, direction, s - from), direction };
}

/** The part of a path from one distance to another, with the turns between. */
export function slicePath(path: Polyline, from: number, to: number): Point[] {
  const points = [pointAt(path, from).point];
  let s = 0;
  for (let i = 0; i < path.length - 1; i++) {
    if (s > from && s < to) points.push(path[i] as Point);
    s += distance(path[i] as Point, path[i + 1] as Point);
  }
  points.push(pointAt(path, to).point);
  return points;
}

/** Where a point lies along a path (`s`) and beside it (`lateral`, positive to the right of the way). */
export function projectOnPath(path: Polyline, p: Point): { s: number; lateral: number; distance: number } {
  let best: { s: number; lateral: number; distance: number } | null = null;
  for (const leg of legsOf(path)) {
    const { point, t } = nearestOnSegment(p, leg);
    const away = distance(p, point);
    if (!best || away < best.distance)
      best = { s: leg.from + t * leg.length, lateral: dot(sub(p, leg.a), rightOf(leg.direction)), distance: away };
  }
  if (!best) throw new RangeError('a path needs two points');
  return best;
}

/** The turn at each inner point of a path, degrees clockwise, −180…180. */
export const turnsOf = (path: Polyline): number[] => {
  const legs = legsOf(path);
  return legs.slice(1).map((leg, i) => differenceDeg(angleOf((legs[i] as Leg).direction), angleOf(leg.direction)));
};

/** A path with a width: `left` and `right` are its edges from the start to the end; `pieces` one convex quad a leg. */
export interface Strip {
  readonly pieces: Polygon[];
  readonly left: Point[];
  readonly right: Point[];
  readonly outline: Polygon;
}

/**
 * A strip along a path, so far to its left and to its right, for turns up to ±135°. Legs meet in a mitre, so that
 * neighbouring pieces share an edge and do not overlap. Where a leg is shorter than the mitres at its ends take away
 * on the inside of the turns, its piece is the triangle that they leave, and the outline crosses itself there.
 */
export function strip(path: Polyline, toLeft: number, toRight: number): Strip {
  const legs = legsOf(path);
  const left = offsetLegs(path, legs, -toLeft);
  const right = offsetLegs(path, legs, toRight);
  const pieces = legs.map(({ direction }, i) => pieceOf(direction, [left[i], left[i + 1], right[i + 1], right[i]] as Corners));
  return { pieces, left, right, outline: [...left, ...right.toReversed()] };
}

type Corners = [leftStart: Point, leftEnd: Point, rightEnd: Point, rightStart: Point];

function pieceOf(d: Point, corners: Corners): Polygon {
  const [leftStart, leftEnd, rightEnd, rightStart] = corners;
  const isLeftSwapped = dot(sub(leftEnd, leftStart), d) < 0;
  const isRightSwapped = dot(sub(rightEnd, rightStart), d) < 0;
  if (isLeftSwapped === isRightSwapped) return corners;
  const meeting = intersectSegments({ a: leftStart, b: rightStart }, { a: leftEnd, b: rightEnd });
  if (meeting === null) return corners;
  return isLeftSwapped ? [meeting, rightEnd, rightStart] : [leftStart, leftEnd, meeting];
}

/** A path moved sideways: positive to the right of the way. Turns are mitred. */
export const offsetPath = (path: Polyline, toRight: number): Point[] => offsetLegs(path, legsOf(path), toRight);

const offsetLegs = (path: Polyline, legs: readonly Leg[], toRight: number): Point[] =>
  path.map((p, i) => {
    const before = (legs[i - 1] ?? legs[i]) as Leg;
    const after = (legs[i] ?? legs[i - 1]) as Leg;
    return mitre(p, before.direction, after.direction, toRight);
  });

function mitre(p: Point, d: Point, e: Point, toRight: number): Point {
  const n = rightOf(d);
  const size = 1 + dot(d, e);
  // A path that turns straight back has no mitre; its end is cut square.
  if (size < 1e-9 || Math.abs(cross(d, e)) < 1e-12) return along(p, n, toRight);
  const m = rightOf(e);
  return along(p, { x: (n.x + m.x) * (1 / size), y: (n.y + m.y) * (1 / size) }, toRight);
}
