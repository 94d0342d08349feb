import { cross, dot, type Point, type Segment, sub } from '../../geometry';
import type { Wall } from '../types';

/** What stands before an edge, seen along its outward normal. */
export interface WallBefore {
  /** To the nearest wall that faces the edge; negative when the wall cuts in behind the edge; null when there is none within reach. */
  distance: number | null;
  /** Every point of the edge has a facing wall within the limit. */
  isClosed: boolean;
}

/** Walls farther than this say nothing about an edge: 10 m. */
const REACH = 10_000;

/**
 * Measures from every point of an edge along its outward normal to the walls that face it.
 * `depth` is how far behind the edge a wall may lie and still be the wall before it; a side counts
 * as closed when walls stand within `limit` all along it.
 */
export function measureWalls(edge: Segment, normal: Point, walls: readonly Wall[], limit: number, depth: number): WallBefore {
  const ahead = viewAhead(edge, normal, walls, depth);
  return { distance: nearestOf(ahead), isClosed: coversAll(ahead.flatMap((view) => clipNear(view, limit))) };
}

/** The same, of the distance alone. */
export const distanceToWalls = (edge: Segment, normal: Point, walls: readonly Wall[], depth: number): WallBefore['distance'] =>
  nearestOf(viewAhead(edge, normal, walls, depth));

function nearestOf(views: readonly View[]): number | null {
  let least = Number.POSITIVE_INFINITY;
  for (const { from, to } of views) least = Math.min(least, from.d, to.d);
  return views.length === 0 ? null : least;
}

/** The walls that face an edge within reach. */
function viewAhead(edge: Segment, normal: Point, walls: readonly Wall[], depth: number): View[] {
  const views: View[] = [];
  for (const wall of walls) {
    const view = dot(wall.inward, normal) < -1e-9 ? viewWall(edge, normal, wall) : null;
    if (view !== null && Math.max(view.from.d, view.to.d) > -depth && Math.min(view.from.d, view.to.d) <= REACH) views.push(view);
  }
  return views;
}

/** A wall seen from a stretch of the edge: where along the edge (0…1) and how far out, at both ends of the stretch. */
interface View {
  from: { t: number; d: number };
  to: { t: number; d: number };
}

/** Distance and place on the wall are linear along the edge, so its ends say all. */
function viewWall({ a, b }: Segment, normal: Point, wall: Segment): View | null {
  const way = sub(wall.b, wall.a);
  const turn = cross(normal, way);
  const toA = sub(wall.a, a);
  const toB = sub(wall.a, b);
  const clipped = clipUnit(cross(toA, normal) / turn, cross(toB, normal) / turn);
  if (clipped === null) return null;
  const start = cross(toA, way) / turn;
  const slope = cross(toB, way) / turn - start;
  return { from: { t: clipped[0], d: start + slope * clipped[0] }, to: { t: clipped[1], d: start + slope * clipped[1] } };
}

/** The part of 0…1 in which a value that runs from `start` to `end` lies between 0 and 1. */
function clipUnit(start: number, end: number): [number, number] | null {
  const slope = end - start;
  if (Math.abs(slope) < 1e-12) return start < -SLACK || start > 1 + SLACK ? null : [0, 1];
  const one = -start / slope;
  const other = (1 - start) / slope;
  const from = Math.max(0, Math.min(one, other));
  const to = Math.min(1, Math.max(one, other));
  return to - from < -SLACK ? null : [from, Math.max(from, to)];
}

/** A wall may end exactly where the edge does. */
const SLACK = 1e-9;

/** The stretch of a view in which the wall is within the limit. */
function clipNear({ from, to }: View, limit: number): [number, number][] {
  const fromIn = from.d <= limit + 1e-6;
  const toIn = to.d <= limit + 1e-6;
  if (fromIn && toIn) return [[from.t, to.t]];
  if (!fromIn && !toIn) return [];
  const crossing = from.t + ((to.t - from.t) * (limit - from.d)) / (to.d - from.d);
  return [fromIn ? [from.t, crossing] : [crossing, to.t]];
}

function coversAll(stretches: readonly [number, number][]): boolean {
  let reached = 0;
  for (const [from, to] of stretches.toSorted((a, b) => a[0] - b[0])) {
    if (from > reached + 1e-6) return false;
    reached = Math.max(reached, to);
  }
  return reached >= 1 - 1e-6;
}
