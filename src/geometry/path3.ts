import type { Point3 } from './points';

/** A bend of a path in space. */
export interface Bend3 {
  readonly at: number;
  readonly point: Point3;
  /** 0 straight on, 90 a right angle, 180 straight back. */
  readonly angleDeg: number;
}

export const distance3 = (a: Point3, b: Point3): number => Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z);

export const pathLength3 = (path: readonly Point3[]): number =>
  path.slice(1).reduce((sum, p, i) => sum + distance3(path[i] as Point3, p), 0);

/** The point at `s` along a path in space, held to its ends. */
export function pointAt3(path: readonly Point3[], s: number): Point3 {
  const [first] = path;
  if (!first) throw new RangeError('a path without points');
  let [left, from] = [Math.max(0, s), first];
  for (const to of path.slice(1)) {
    const length = distance3(from, to);
    if (left <= length && length > 0) return lerp3(from, to, left / length);
    left -= length;
    from = to;
  }
  return from;
}

/** Turns smaller than this are drawing dust, not bends. */
const LEAST_BEND_DEG = 0.5;

/** Bends of a path in space; with `start`, the direction in which the path must leave its first point, also the one there. */
export function bendsOf(path: readonly Point3[], start?: Point3): Bend3[] {
  const legs = path
    .slice(1)
    .map((to, i) => ({ from: path[i] as Point3, d: difference(path[i] as Point3, to), length: distance3(path[i] as Point3, to) }));
  const real = legs.filter((leg) => leg.length > 0);
  let at = 0;
  const bends = real.map((leg, i) => {
    const before = i === 0 ? start : (real[i - 1] as (typeof real)[number]).d;
    const bend = { at, point: leg.from, angleDeg: before ? angleBetween(before, leg.d) : 0 };
    at += leg.length;
    return bend;
  });
  return bends.filter((bend) => bend.angleDeg >= LEAST_BEND_DEG);
}

const difference = (a: Point3, b: Point3): Point3 => ({ x: b.x - a.x, y: b.y - a.y, z: b.z - a.z });

const lerp3 = (a: Point3, b: Point3, t: number): Point3 => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
  z: a.z + (b.z - a.z) * t,
});

function angleBetween(a: Point3, b: Point3): number {
  const crossed = Math.hypot(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);
  return (Math.atan2(crossed, a.x * b.x + a.y * b.y + a.z * b.z) * 180) / Math.PI;
}
