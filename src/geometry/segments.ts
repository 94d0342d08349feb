import { cross, distance, lerp, type Point, type Segment, sub } from './points';

/** Nearest point of a segment, and how far along it (0…1). On numbers, like what follows: searches ask it of every edge. */
export function nearestOnSegment(p: Point, { a, b }: Segment): { point: Point; t: number } {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const size = dx * dx + dy * dy;
  const part = size === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / size;
  const t = part < 0 ? 0 : part > 1 ? 1 : part;
  return { point: t === 1 ? b : lerp(a, b, t), t };
}

export const distanceToSegment = (p: Point, segment: Segment): number => distance(p, nearestOnSegment(p, segment).point);

/** Where two segments meet; null when they do not, or run alongside each other. Works on numbers: searches ask it of every pair. */
export function intersectSegments(s: Segment, r: Segment): Point | null {
  const dx = s.b.x - s.a.x;
  const dy = s.b.y - s.a.y;
  const ex = r.b.x - r.a.x;
  const ey = r.b.y - r.a.y;
  const det = dx * ey - dy * ex;
  if (det === 0) return null;
  const wx = r.a.x - s.a.x;
  const wy = r.a.y - s.a.y;
  const t = (wx * ey - wy * ex) / det;
  const u = (wx * dy - wy * dx) / det;
  return t < 0 || t > 1 || u < 0 || u > 1 ? null : lerp(s.a, s.b, t);
}

/** Whether two segments cross properly: each has its ends strictly on both sides of the other. */
export function isCrossing(s: Segment, r: Segment): boolean {
  const side = (o: Segment, p: Point) => cross(sub(o.b, o.a), sub(p, o.a));
  return side(s, r.a) * side(s, r.b) < 0 && side(r, s.a) * side(r, s.b) < 0;
}

/** The nearest two points of two segments: `a` on the first, `b` on the second. The same point where they meet. */
export function nearestBetweenSegments(s: Segment, r: Segment): Segment & { distance: number } {
  const met = intersectSegments(s, r);
  if (met) return { a: met, b: met, distance: 0 };
  const candidates = [
    ...[s.a, s.b].map((p) => ({ a: p, b: nearestOnSegment(p, r).point })),
    ...[r.a, r.b].map((p) => ({ a: nearestOnSegment(p, s).point, b: p })),
  ].map((pair) => ({ distance: distance(pair.a, pair.b), ...pair }));
  return candidates.reduce((best, pair) => (pair.distance < best.distance ? pair : best));
}

/** How far a ray from `origin` along the unit direction `d` goes until it meets the segment; null when it misses. */
export function rayToSegment(origin: Point, d: Point, { a, b }: Segment): number | null {
  const e = sub(b, a);
  const det = cross(d, e);
  if (det === 0) return null;
  const w = sub(a, origin);
  const t = cross(w, e) / det;
  const u = cross(w, d) / det;
  return t < 0 || u < -1e-12 || u > 1 + 1e-12 ? null : t;
}
