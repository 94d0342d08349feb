import { along, distance3, dot, type Point, type Point3, scale, sub } from '../../geometry';
import type { Run } from '../../plan';

/** Legs that lie flat for less than this are risers: they have no direction on the paper. */
const FLAT = 1;

/**
 * A run whose machine moved: its riser stays over the collar, each leg keeps its direction and takes
 * up what lies along it, so that right angles stay right. The fan stays on its leg.
 */
export function stretchRun(run: Run, collar: Point3 | null, by: Point): Pick<Run, 'points' | 'fan'> {
  let left = by;
  let before: Point | null = collar;
  const points = run.points.map((point) => {
    left = before === null ? left : acrossOf(left, sub(point, before));
    before = point;
    return { ...point, x: point.x + left.x, y: point.y + left.y };
  });
  const moved = collar === null ? null : { ...collar, x: collar.x + by.x, y: collar.y + by.y };
  const fan = run.fan && { ...run.fan, at: keepOnLeg(withStart(collar, run.points), withStart(moved, points), run.fan.at) };
  return { points, fan };
}

/** The part of a motion that a leg cannot take up by growing or shrinking. */
function acrossOf(motion: Point, leg: Point): Point {
  const size = Math.hypot(leg.x, leg.y);
  if (size < FLAT) return motion;
  const direction = scale(leg, 1 / size);
  return along(motion, direction, -dot(motion, direction));
}

const withStart = (start: Point3 | null, points: readonly Point3[]) => (start === null ? points : [start, ...points]);

/** The distance along the new way that lies on the same leg, as far from its beginning as before. */
function keepOnLeg(before: readonly Point3[], after: readonly Point3[], at: number): number {
  const [old, now] = [legLengths(before), legLengths(after)];
  let [from, to] = [0, 0];
  for (const [index, length] of old.entries()) {
    const grown = now[index] ?? length;
    if (at <= from + length) return to + Math.min(at - from, grown);
    from += length;
    to += grown;
  }
  return to + at - from;
}

const legLengths = (points: readonly Point3[]) => points.slice(1).map((point, index) => distance3(points[index] ?? point, point));
