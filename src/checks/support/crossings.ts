import type { Point } from '../../geometry';

/** Places where two ways cross, in the order of the first. Ways that only touch, or share a stretch, do not cross. */
export function findCrossings(one: readonly Point[], other: readonly Point[]): Point[] {
  return legs(one).flatMap(([a, b]) => legs(other).flatMap(([c, d]) => cross(a, b, c, d)));
}

const legs = (way: readonly Point[]) => way.slice(1).map((to, i) => [way[i] as Point, to] as const);

/** Proper crossing of two segments: each has its ends on both sides of the other. */
function cross(a: Point, b: Point, c: Point, d: Point): Point[] {
  const [sideC, sideD] = [turn(a, b, c), turn(a, b, d)];
  const [sideA, sideB] = [turn(c, d, a), turn(c, d, b)];
  if (sideC * sideD >= 0 || sideA * sideB >= 0) return [];
  const t = sideA / (sideA - sideB);
  return [{ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }];
}

/** Positive when p lies to the right of the way from a to b, as seen on the paper. */
const turn = (a: Point, b: Point, p: Point) => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
