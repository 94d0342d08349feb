import { along, distance, type Point, type Polygon, type Segment, sub } from './points';
import { orient } from './polygon';
import { intersectSegments, nearestOnSegment } from './segments';

/** A place as far from a body as its clearance asks lies on one of these: a moved edge, or a circle about a corner. */
export type ClearanceCurve =
  | { readonly kind: 'segment'; readonly segment: Segment }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number };

export const segmentCurve = (segment: Segment): ClearanceCurve => ({ kind: 'segment', segment });

/** Visits the places at a distance from an outline on one side of it: outside a body, or inside a room. Some of them may be nearer to another part of it. */
export function eachClearanceCurve(
  polygon: Polygon,
  radius: number,
  side: 'outside' | 'inside',
  visit: (curve: ClearanceCurve) => void,
): void {
  const corners = orient(polygon);
  for (let i = 0; i < corners.length; i++) {
    const a = corners[i] as Point;
    const b = corners[(i + 1) % corners.length] as Point;
    visit({ kind: 'circle', centre: a, radius });
    const size = distance(a, b);
    if (size === 0) continue;
    // Left of the way is outside, for the corners are walked clockwise on the paper.
    const by = side === 'outside' ? radius / size : -radius / size;
    const outX = (b.y - a.y) * by;
    const outY = (a.x - b.x) * by;
    visit(segmentCurve({ a: { x: a.x + outX, y: a.y + outY }, b: { x: b.x + outX, y: b.y + outY } }));
  }
}

/** The least distance from a point to a curve. */
export function distanceToCurve(p: Point, curve: ClearanceCurve): number {
  if (curve.kind === 'circle') return Math.abs(distance(p, curve.centre) - curve.radius);
  return distance(p, nearestOnSegment(p, curve.segment).point);
}

/** The point of a curve nearest to a place. At a circle's centre all its points are as near, and none is named. */
export function footPoint(p: Point, curve: ClearanceCurve): Point | null {
  if (curve.kind === 'segment') return nearestOnSegment(p, curve.segment).point;
  const away = distance(p, curve.centre);
  return away === 0 ? null : along(curve.centre, sub(p, curve.centre), curve.radius / away);
}

/** Visits the ends of a moved edge; a circle has none. */
export function eachEnd(curve: ClearanceCurve, visit: (end: Point) => void): void {
  if (curve.kind === 'circle') return;
  visit(curve.segment.a);
  visit(curve.segment.b);
}

/** Visits the points where two curves meet; none of curves that lie on each other. */
export function eachCrossing(one: ClearanceCurve, other: ClearanceCurve, visit: (met: Point) => void): void {
  if (one.kind === 'circle') {
    if (other.kind === 'circle') crossCircles(one, other, visit);
    else crossSegmentCircle(other.segment, one, visit);
  } else if (other.kind === 'circle') crossSegmentCircle(one.segment, other, visit);
  else {
    const met = intersectSegments(one.segment, other.segment);
    if (met !== null) visit(met);
  }
}

type Circle = Extract<ClearanceCurve, { kind: 'circle' }>;

/** On numbers until they meet: a search asks it of every pair, and few meet. */
function crossSegmentCircle({ a, b }: Segment, { centre, radius }: Circle, visit: (met: Point) => void): void {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const size = dx * dx + dy * dy;
  if (size === 0) return;
  const middle = ((centre.x - a.x) * dx + (centre.y - a.y) * dy) / size;
  const awayX = centre.x - a.x - dx * middle;
  const awayY = centre.y - a.y - dy * middle;
  const left = radius * radius - awayX * awayX - awayY * awayY;
  if (left < 0) return;
  const half = Math.sqrt(left / size);
  const one = middle - half;
  const other = middle + half;
  if (one >= 0 && one <= 1) visit({ x: a.x + dx * one, y: a.y + dy * one });
  if (other >= 0 && other <= 1) visit({ x: a.x + dx * other, y: a.y + dy * other });
}

function crossCircles(one: Circle, other: Circle, visit: (met: Point) => void): void {
  const dx = other.centre.x - one.centre.x;
  const dy = other.centre.y - one.centre.y;
  const apart = Math.sqrt(dx * dx + dy * dy);
  if (apart === 0 || apart > one.radius + other.radius || apart < Math.abs(one.radius - other.radius)) return;
  const t = (apart * apart + one.radius * one.radius - other.radius * other.radius) / (2 * apart);
  const half = Math.sqrt(Math.max(0, one.radius * one.radius - t * t));
  const x = one.centre.x + dx * (t / apart);
  const y = one.centre.y + dy * (t / apart);
  const byX = dy * (half / apart);
  const byY = dx * (half / apart);
  visit({ x: x + byX, y: y - byY });
  visit({ x: x - byX, y: y + byY });
}
