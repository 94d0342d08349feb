import type { Point } from './points';

/** An upright box. */
export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The upright box around points. Throws a RangeError when there are none. */
export function boundsOf(points: readonly Point[]): Bounds {
  if (points.length === 0) throw new RangeError('bounds of no points');
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (let i = 0; i < points.length; i++) {
    const { x, y } = points[i] as Point;
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** Whether two boxes come nearer than `reach` to each other (touching counts). */
export const isNearBounds = (a: Bounds, b: Bounds, reach = 0): boolean =>
  a.minX - reach <= b.maxX && b.minX - reach <= a.maxX && a.minY - reach <= b.maxY && b.minY - reach <= a.maxY;

/** Square of the distance from a place to a box; 0 in it. */
export function squareToBounds({ minX, minY, maxX, maxY }: Bounds, { x, y }: Point): number {
  const across = Math.max(0, minX - x, x - maxX);
  const down = Math.max(0, minY - y, y - maxY);
  return across * across + down * down;
}

/** Square of the least distance between two boxes; 0 where they meet. */
export function squareBetweenBounds(a: Bounds, b: Bounds): number {
  const across = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const down = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  return across * across + down * down;
}

export const unionBounds = (a: Bounds, b: Bounds): Bounds => ({
  minX: Math.min(a.minX, b.minX),
  minY: Math.min(a.minY, b.minY),
  maxX: Math.max(a.maxX, b.maxX),
  maxY: Math.max(a.maxY, b.maxY),
});

export const growBounds = (b: Bounds, by: number): Bounds => ({
  minX: b.minX - by,
  minY: b.minY - by,
  maxX: b.maxX + by,
  maxY: b.maxY + by,
});
