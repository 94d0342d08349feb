import { along, cross, distance, dot, type Point, sub } from '../../geometry';
import type { Guide, GuideKind } from '../types';
import { roundTo } from './step';

/** A line that a point can lie on; without end. */
export interface SnapLine {
  readonly origin: Point;
  /** Unit vector. */
  readonly direction: Point;
  readonly kind: GuideKind;
}

export interface PointTargets {
  readonly points: readonly Point[];
  readonly lines: readonly SnapLine[];
}

export interface SnappedPoint {
  readonly point: Point;
  readonly guides: readonly Guide[];
}

/** Two lines that meet at less than this are no aim together. */
const LEAST_CROSS = 0.2;

/**
 * A point held to what is near: a given point first, then where two lines meet, then the nearest line
 * with its distance from the line's origin in steps. Far from everything, it stays where it is.
 */
export function snapPoint(point: Point, targets: PointTargets, reach: number, step: number): SnappedPoint {
  const spot = nearest(targets.points, point);
  if (spot !== null && distance(spot, point) <= reach) return { point: spot, guides: [{ kind: 'aligned', from: spot, to: spot }] };
  const lines = targets.lines.map((line) => ({ line, away: awayFrom(line, point) })).filter(({ away }) => away <= reach);
  const near = lines.sort((a, b) => a.away - b.away).map(({ line }) => line);
  return atCrossing(near, point, reach) ?? onLine(near[0], point, step) ?? { point, guides: [] };
}

/** Lines through a point, square and at half a right angle to a direction. */
export function raysFrom(origin: Point, direction: Point, kind: GuideKind = 'square', withDiagonals = false): SnapLine[] {
  const { x, y } = direction;
  const square = [
    { origin, direction: { x, y }, kind },
    { origin, direction: { x: 0 - y, y: x }, kind },
  ];
  if (!withDiagonals) return square;
  const half = Math.SQRT1_2;
  const diagonals = [
    { x: (x - y) * half, y: (x + y) * half },
    { x: (x + y) * half, y: (y - x) * half },
  ];
  return [...square, ...diagonals.map((d) => ({ origin, direction: d, kind }))];
}

function nearest(points: readonly Point[], point: Point): Point | null {
  return points.reduce<Point | null>((best, each) => (best === null || distance(each, point) < distance(best, point) ? each : best), null);
}

const awayFrom = ({ origin, direction }: SnapLine, point: Point) => Math.abs(cross(direction, sub(point, origin)));

function atCrossing(lines: readonly SnapLine[], point: Point, reach: number): SnappedPoint | null {
  const [first] = lines;
  const second = lines.find((line) => first !== undefined && Math.abs(cross(first.direction, line.direction)) > LEAST_CROSS);
  if (first === undefined || second === undefined) return null;
  const t = cross(sub(second.origin, first.origin), second.direction) / cross(first.direction, second.direction);
  const met = along(first.origin, first.direction, t);
  return distance(met, point) <= reach * 1.5 ? { point: met, guides: [guideTo(first, met), guideTo(second, met)] } : null;
}

function onLine(line: SnapLine | undefined, point: Point, step: number): SnappedPoint | null {
  if (line === undefined) return null;
  const at = along(line.origin, line.direction, roundTo(dot(sub(point, line.origin), line.direction), step));
  return { point: at, guides: [guideTo(line, at)] };
}

const guideTo = (line: SnapLine, to: Point): Guide => ({ kind: line.kind, from: line.origin, to });
