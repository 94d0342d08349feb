import { add, along, angleOf, directionTo, type Point, rightOf, scale } from '../../geometry';

/** Unit direction from `a` to `b`; to the right where both are the same, so that a drawing never loses its way. */
export function direction(a: Point, b: Point): Point {
  const d = directionTo(a, b);
  return d.x === 0 && d.y === 0 ? { x: 1, y: 0 } : d;
}

/** The angle at which a text along `d` reads from the bottom or the right of the paper: −90 ≤ angle < 90. */
export function readingAngle(d: Point): number {
  const half = angleOf(d) % 180;
  const angle = half > 90 - 1e-6 ? half - 180 : half;
  return Math.abs(angle) < 1e-6 ? 0 : angle;
}

/** A rectangle about a centre, its first side along the unit direction `d`. */
export function rectangleAt(centre: Point, d: Point, length: number, width: number): Point[] {
  const n = rightOf(d);
  const corner = (i: number, j: number) => along(along(centre, d, (i * length) / 2), n, (j * width) / 2);
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** The mean of a polygon's corners: its middle when they are evenly set. */
export function middleOf(points: readonly Point[]): Point {
  return scale(points.reduce(add, { x: 0, y: 0 }), 1 / Math.max(1, points.length));
}
