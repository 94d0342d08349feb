import type { Point } from '../../geometry';

/** A rectangle at any angle: its centre, its long direction, and half of its length and height. */
export interface Box {
  centre: Point;
  /** Unit direction of the length. */
  d: Point;
  halfLength: number;
  halfHeight: number;
}

/** Whether two boxes share more than a line, grown by `clearance` between them; by the separating axes of both. */
export function overlaps(a: Box, b: Box, clearance = 0): boolean {
  return (
    !isApart(a, b, a.d, clearance) &&
    !isApart(a, b, normal(a), clearance) &&
    !isApart(a, b, b.d, clearance) &&
    !isApart(a, b, normal(b), clearance)
  );
}

/** Box about a stretch from `from` to `to`, `height` across. */
export function boxAround(from: Point, to: Point, height: number): Box {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const d = length === 0 ? { x: 1, y: 0 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return { centre: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }, d, halfLength: length / 2, halfHeight: height / 2 };
}

/** Upright box between two corners. */
export function uprightBox(minX: number, minY: number, maxX: number, maxY: number): Box {
  const centre = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  return { centre, d: { x: 1, y: 0 }, halfLength: (maxX - minX) / 2, halfHeight: (maxY - minY) / 2 };
}

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

const normal = ({ d }: Box): Point => ({ x: -d.y, y: d.x });

function isApart(a: Box, b: Box, axis: Point, clearance: number): boolean {
  const gap = Math.abs((b.centre.x - a.centre.x) * axis.x + (b.centre.y - a.centre.y) * axis.y);
  return gap >= reach(a, axis) + reach(b, axis) + clearance - 1e-9;
}

function reach({ d, halfLength, halfHeight }: Box, axis: Point): number {
  return halfLength * Math.abs(d.x * axis.x + d.y * axis.y) + halfHeight * Math.abs(d.x * axis.y - d.y * axis.x);
}
