import { cross, distance, type Point, type Polygon, type Segment, sub } from './points';
import { distanceToSegment } from './segments';

/** Positive when the corners are walked clockwise on the paper; 0 for fewer than three points. mm². */
export function signedArea(polygon: Polygon): number {
  const first = polygon[0];
  if (!first) return 0;
  // About the first corner, so that a room far from the origin loses no digits.
  let twice = 0;
  for (let i = 1; i + 1 < polygon.length; i++) twice += cross(sub(polygon[i] as Point, first), sub(polygon[i + 1] as Point, first));
  return twice / 2;
}

export const area = (polygon: Polygon): number => Math.abs(signedArea(polygon));

/** Centre of area; of the corners where there is no area. */
export function centroid(polygon: Polygon): Point {
  const first = polygon[0];
  if (!first) throw new RangeError('centroid of no points');
  let [twice, x, y] = [0, 0, 0];
  for (let i = 1; i + 1 < polygon.length; i++) {
    const [a, b] = [sub(polygon[i] as Point, first), sub(polygon[i + 1] as Point, first)];
    const weight = cross(a, b);
    twice += weight;
    x += (weight * (a.x + b.x)) / 3;
    y += (weight * (a.y + b.y)) / 3;
  }
  if (twice === 0) return meanOf(polygon);
  return { x: first.x + x / twice, y: first.y + y / twice };
}

export function meanOf(points: readonly Point[]): Point {
  const n = points.length;
  return { x: points.reduce((sum, p) => sum + p.x, 0) / n, y: points.reduce((sum, p) => sum + p.y, 0) / n };
}

export function edgesOf(polygon: Polygon): Segment[] {
  const edges: Segment[] = [];
  for (let i = 0; i < polygon.length; i++) edges.push({ a: polygon[i] as Point, b: polygon[(i + 1) % polygon.length] as Point });
  return edges;
}

/** A polygon moved, not turned. */
export function translate(polygon: Polygon, by: Point): Polygon {
  const moved: Point[] = [];
  for (const { x, y } of polygon) moved.push({ x: x + by.x, y: y + by.y });
  return moved;
}

export const perimeter = (polygon: Polygon): number => edgesOf(polygon).reduce((sum, { a, b }) => sum + distance(a, b), 0);

/** The same outline walked so that its signed area is positive (clockwise on the paper). */
export const orient = (polygon: Polygon): Polygon => (signedArea(polygon) < 0 ? polygon.toReversed() : polygon);

/** Nearer than this two places are one, mm: a thousand times finer than a room can be measured. */
export const TOUCH = 1e-6;

/** Whether no corner of a simple polygon turns the other way. Corners on a straight line (within `TOUCH`) are allowed. */
export function isConvex(polygon: Polygon): boolean {
  const turns = polygon.map((a, i) => {
    const [b, c] = [polygon[(i + 1) % polygon.length], polygon[(i + 2) % polygon.length]] as [Point, Point];
    const turn = cross(sub(b, a), sub(c, b));
    return Math.abs(turn) <= TOUCH * Math.max(distance(a, b), distance(b, c)) ? 0 : turn;
  });
  return polygon.length >= 3 && (turns.every((turn) => turn >= 0) || turns.every((turn) => turn <= 0));
}

/** The outline without repeated corners and without those on the straight line between their neighbours. */
export function simplifyCollinear(polygon: Polygon, tolerance = TOUCH): Polygon {
  const apart = polygon.filter((p, i) => distance(p, polygon[(i + 1) % polygon.length] as Point) > tolerance);
  return apart.filter((p, i) => {
    const [before, after] = [apart[(i + apart.length - 1) % apart.length], apart[(i + 1) % apart.length]] as [Point, Point];
    return distanceToSegment(p, { a: before, b: after }) > tolerance;
  });
}

/**
 * Distance from a point to the outline of a simple polygon: negative inside, positive outside. An outline of
 * two points is a segment and has no inside. Works on numbers, since every measure of clearance rests on it.
 */
export function signedDistance(polygon: Polygon, { x, y }: Point): number {
  let least = Infinity;
  let isInside = false;
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const a = polygon[j] as Point;
    const b = polygon[i] as Point;
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const size = dx * dx + dy * dy;
    const part = size === 0 ? 0 : ((x - a.x) * dx + (y - a.y) * dy) / size;
    const t = part < 0 ? 0 : part > 1 ? 1 : part;
    const awayX = x - a.x - t * dx;
    const awayY = y - a.y - t * dy;
    const square = awayX * awayX + awayY * awayY;
    if (square < least) least = square;
    if (a.y > y !== b.y > y && x < (dx * (y - a.y)) / dy + a.x) isInside = !isInside;
  }
  return isInside ? -Math.sqrt(least) : Math.sqrt(least);
}

/** Whether a point lies inside a simple polygon; on an edge (within `TOUCH`) counts as inside. */
export const containsPoint = (polygon: Polygon, p: Point): boolean => signedDistance(polygon, p) <= TOUCH;

/** Distance from a point to the nearest edge, inside or outside. */
export const distanceToOutline = (polygon: Polygon, p: Point): number => Math.abs(signedDistance(polygon, p));
