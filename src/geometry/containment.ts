import { distance, lerp, type Point, type Polygon, type Segment } from './points';
import { containsPoint, edgesOf } from './polygon';
import { isCrossing, nearestOnSegment } from './segments';

/** How far a convex piece reaches out of a simple outline. */
export interface Protrusion {
  /** mm; 0 when it is inside. */
  readonly by: number;
  /** The point that is farthest out, and the nearest point of the outline. */
  readonly place: Segment | null;
}

/**
 * The largest distance by which a convex piece lies outside a simple (also concave) outline. The
 * farthest point lies on the piece's own outline: at a corner, or on an edge that crosses walls,
 * as over a notch of the room.
 */
export function measureProtrusion(outline: Polygon, piece: Polygon): Protrusion {
  const walls = edgesOf(outline);
  const isOverWall = (edge: Segment) => walls.some((wall) => isCrossing(edge, wall));
  const candidates = [
    ...piece,
    ...edgesOf(piece)
      .filter(isOverWall)
      .map((edge) => findFarthest(outline, edge)),
  ];
  return candidates.map((p) => protrusionAt(outline, p)).reduce((worst, next) => (next.by > worst.by ? next : worst), INSIDE);
}

/** Whether a convex piece lies inside an outline, touching allowed. */
export const isInside = (outline: Polygon, piece: Polygon, tolerance = 1e-6): boolean => measureProtrusion(outline, piece).by <= tolerance;

/** The nearest point of an outline. */
export function nearestOnOutline(outline: Polygon, p: Point): Point {
  let best: Point | null = null;
  for (const edge of edgesOf(outline)) {
    const { point } = nearestOnSegment(p, edge);
    if (!best || distance(p, point) < distance(p, best)) best = point;
  }
  if (!best) throw new RangeError('an outline without points');
  return best;
}

const INSIDE: Protrusion = { by: 0, place: null };

function protrusionAt(outline: Polygon, p: Point): Protrusion {
  if (containsPoint(outline, p)) return INSIDE;
  const nearest = nearestOnOutline(outline, p);
  return { by: distance(p, nearest), place: { a: p, b: nearest } };
}

const SAMPLES = 32;
const REFINEMENTS = 40;

/** The point of an edge that is farthest out: the best of a row of samples, closed in on by thirds. */
function findFarthest(outline: Polygon, edge: Segment): Point {
  const outAt = (t: number) => protrusionAt(outline, lerp(edge.a, edge.b, t)).by;
  const samples = Array.from({ length: SAMPLES + 1 }, (_, i) => i / SAMPLES);
  const best = samples.reduce((far, t) => (outAt(t) > outAt(far) ? t : far), 0);
  let [from, to] = [Math.max(0, best - 1 / SAMPLES), Math.min(1, best + 1 / SAMPLES)];
  for (let i = 0; i < REFINEMENTS; i++) {
    const third = (to - from) / 3;
    if (outAt(from + third) < outAt(to - third)) from += third;
    else to -= third;
  }
  return lerp(edge.a, edge.b, (from + to) / 2);
}
