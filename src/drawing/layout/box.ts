import type { Point } from '../../geometry';

/** A rectangle at any angle: its centre, its long direction, and half of its length and height. */
export interface Box {
  centre: Point;
  /** Unit direction of the length. */
  d: Point;
  halfLength: number;
  halfHeight: number;
}

/**
 * Whether two boxes share more than a line, grown by `clearance` between them; by the separating axes of both.
 * Plain numbers in one piece, as this runs many thousand times for one drawing.
 */
export function overlaps(a: Box, b: Box, clearance = 0): boolean {
  const x = b.centre.x - a.centre.x;
  const y = b.centre.y - a.centre.y;
  const far = a.halfLength + a.halfHeight + b.halfLength + b.halfHeight + clearance;
  if (x * x + y * y >= far * far) return false;
  const along = Math.abs(a.d.x * b.d.x + a.d.y * b.d.y);
  const across = Math.abs(a.d.x * b.d.y - a.d.y * b.d.x);
  const room = clearance - ROUNDING;
  return (
    Math.abs(x * a.d.x + y * a.d.y) < a.halfLength + b.halfLength * along + b.halfHeight * across + room &&
    Math.abs(y * a.d.x - x * a.d.y) < a.halfHeight + b.halfLength * across + b.halfHeight * along + room &&
    Math.abs(x * b.d.x + y * b.d.y) < b.halfLength + a.halfLength * along + a.halfHeight * across + room &&
    Math.abs(y * b.d.x - x * b.d.y) < b.halfHeight + a.halfLength * across + a.halfHeight * along + room
  );
}

const ROUNDING = 1e-9;

/** Box about a stretch from `from` to `to`, `height` across. */
export function boxAround(from: Point, to: Point, height: number): Box {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const d = length === 0 ? { x: 1, y: 0 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return { centre: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }, d, halfLength: length / 2, halfHeight: height / 2 };
}

/** The same box with another height. */
export const withHalfHeight = ({ centre, d, halfLength }: Box, halfHeight: number): Box => ({ centre, d, halfLength, halfHeight });

/** The same box in another unit. */
export const scaleBox = ({ centre, d, halfLength, halfHeight }: Box, factor: number): Box => ({
  centre: { x: centre.x * factor, y: centre.y * factor },
  d,
  halfLength: halfLength * factor,
  halfHeight: halfHeight * factor,
});

/** The four corners in order. */
export function cornersOf({ centre, d, halfLength, halfHeight }: Box): Point[] {
  const corner = (i: number, j: number) => ({
    x: centre.x + d.x * i * halfLength - d.y * j * halfHeight,
    y: centre.y + d.y * i * halfLength + d.x * j * halfHeight,
  });
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}
