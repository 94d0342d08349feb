import { boundsOf, isNearBounds } from './bounds';
import { wallBodies } from './passageBody';
import { distance, lerp, type Point, type Polygon, type Segment } from './points';
import { containsPoint, edgesOf, signedDistance, TOUCH } from './polygon';
import { intersectSegments, nearestOnSegment } from './segments';

/** How far a convex piece reaches out of a simple outline. */
export interface Protrusion {
  /** mm; 0 when it is inside. */
  readonly by: number;
  /** The point that is farthest out, and the nearest point of the outline. */
  readonly place: Segment | null;
}

/**
 * The largest distance by which a convex piece lies outside a simple (also concave) outline. The
 * farthest point is looked for on the piece's own outline: at its corners, and on edges that are out or
 * meet a wall, as over a notch of the room.
 */
export function measureProtrusion(outline: Polygon, piece: Polygon): Protrusion {
  const [first] = piece;
  if (first === undefined || isWellInside(outline, piece, first)) return { by: 0, place: null };
  let farthest = first;
  let by = -Infinity;
  const measure = (p: Point): number => {
    const out = signedDistance(outline, p);
    if (out > by) {
      farthest = p;
      by = out;
    }
    return out;
  };
  const outs = piece.map(measure);
  const isOut = (corner: number) => (outs[corner % piece.length] as number) > 0;
  const walls = edgesOf(outline);
  edgesOf(piece).forEach((edge, i) => {
    const isPartlyOut = isOut(i) || isOut(i + 1) || walls.some((wall) => intersectSegments(edge, wall) !== null);
    if (isPartlyOut) measure(findFarthest(outline, edge));
  });
  return by <= TOUCH ? { by: 0, place: null } : { by, place: { a: farthest, b: nearestOnOutline(outline, farthest) } };
}

/** No wall comes near it, and one corner is inside: nothing more to measure. */
function isWellInside(outline: Polygon, piece: Polygon, corner: Point): boolean {
  const box = boundsOf(piece);
  for (const { bounds } of wallBodies(outline)) if (isNearBounds(box, bounds)) return false;
  return containsPoint(outline, corner);
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

const SAMPLES = 32;
/** Part of an edge from one sample to the next. */
const STEP = 1 / SAMPLES;
const REFINEMENTS = 34;
/** Of the golden section: each step keeps one of its two inner points, so that a step asks for one distance. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The point of an edge that is farthest out: the best of a row of samples, closed in on by the golden section. */
function findFarthest(outline: Polygon, edge: Segment): Point {
  const outAt = (t: number) => signedDistance(outline, lerp(edge.a, edge.b, t));
  const heights = Array.from({ length: SAMPLES + 1 }, (_, i) => outAt(i * STEP));
  const best = heights.indexOf(Math.max(...heights)) * STEP;
  const at = climb(outAt, Math.max(0, best - STEP), Math.min(1, best + STEP));
  return lerp(edge.a, edge.b, at);
}

/** Where a function that rises to one height and falls again is highest. */
function climb(heightAt: (t: number) => number, start: number, end: number): number {
  let from = start;
  let to = end;
  let low = to - GOLDEN * (to - from);
  let high = from + GOLDEN * (to - from);
  let atLow = heightAt(low);
  let atHigh = heightAt(high);
  for (let i = 0; i < REFINEMENTS; i++) {
    if (atLow < atHigh) {
      from = low;
      low = high;
      atLow = atHigh;
      high = from + GOLDEN * (to - from);
      atHigh = heightAt(high);
    } else {
      to = high;
      high = low;
      atHigh = atLow;
      low = to - GOLDEN * (to - from);
      atLow = heightAt(low);
    }
  }
  return (from + to) / 2;
}
