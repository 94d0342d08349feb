import { along, distance, leftOf, type Point, type Polygon, rightOf, type Segment, sub } from './points';
import { edgesOf, orient } from './polygon';
import { intersectSegments, nearestOnSegment } from './segments';

/** A place as far from a body as its clearance asks lies on one of these: a moved edge, or a circle about a corner. */
export type ClearanceCurve =
  | { readonly kind: 'segment'; readonly segment: Segment }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number };

export const segmentCurve = (segment: Segment): ClearanceCurve => ({ kind: 'segment', segment });

/** The places at a distance from an outline on one side of it: outside a body, or inside a room. Some of them may be nearer to another part of it. */
export function clearanceCurvesOf(polygon: Polygon, radius: number, side: 'outside' | 'inside'): ClearanceCurve[] {
  return edgesOf(orient(polygon)).flatMap(({ a, b }) => {
    const size = distance(a, b);
    const circle: ClearanceCurve = { kind: 'circle', centre: a, radius };
    if (size === 0) return [circle];
    const d = { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
    const normal = side === 'outside' ? leftOf(d) : rightOf(d);
    return [circle, segmentCurve({ a: along(a, normal, radius), b: along(b, normal, radius) })];
  });
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

const NONE: readonly Point[] = [];

/** The ends of a moved edge; a circle has none. */
export const endsOf = (curve: ClearanceCurve): readonly Point[] => (curve.kind === 'segment' ? [curve.segment.a, curve.segment.b] : NONE);

/** Where two curves meet; none for curves that lie on each other. */
export function crossCurves(one: ClearanceCurve, other: ClearanceCurve): readonly Point[] {
  if (one.kind === 'segment' && other.kind === 'segment') {
    const met = intersectSegments(one.segment, other.segment);
    return met ? [met] : NONE;
  }
  if (one.kind === 'circle' && other.kind === 'circle') return crossCircles(one, other);
  if (one.kind === 'segment' && other.kind === 'circle') return crossSegmentCircle(one.segment, other);
  return crossCurves(other, one);
}

type Circle = Extract<ClearanceCurve, { kind: 'circle' }>;

/** On numbers until they meet: a search asks it of every pair, and few meet. */
function crossSegmentCircle({ a, b }: Segment, { centre, radius }: Circle): readonly Point[] {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const size = dx * dx + dy * dy;
  if (size === 0) return NONE;
  const middle = ((centre.x - a.x) * dx + (centre.y - a.y) * dy) / size;
  const awayX = centre.x - a.x - dx * middle;
  const awayY = centre.y - a.y - dy * middle;
  const left = radius * radius - awayX * awayX - awayY * awayY;
  if (left < 0) return NONE;
  const half = Math.sqrt(left / size);
  return [middle - half, middle + half].filter((t) => t >= 0 && t <= 1).map((t) => along(a, { x: dx, y: dy }, t));
}

function crossCircles(one: Circle, other: Circle): readonly Point[] {
  const apart = distance(one.centre, other.centre);
  if (apart === 0 || apart > one.radius + other.radius || apart < Math.abs(one.radius - other.radius)) return NONE;
  const d = sub(other.centre, one.centre);
  const t = (apart * apart + one.radius * one.radius - other.radius * other.radius) / (2 * apart);
  const half = Math.sqrt(Math.max(0, one.radius * one.radius - t * t));
  const middle = along(one.centre, d, t / apart);
  return [along(middle, leftOf(d), half / apart), along(middle, rightOf(d), half / apart)];
}
