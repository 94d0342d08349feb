/** A point or a direction in the plane; millimetres, y down the paper. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A point in space; z up. */
export interface Point3 extends Point {
  readonly z: number;
}

/** A closed outline without a closing duplicate. */
export type Polygon = readonly Point[];

export interface Segment {
  readonly a: Point;
  readonly b: Point;
}

export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const sub = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const scale = (a: Point, factor: number): Point => ({ x: a.x * factor, y: a.y * factor });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
/** Positive when b lies clockwise of a, as seen on the paper. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
// Roots of squares, not Math.hypot: what that keeps of digits matters only far beyond any room, and it takes many times as long.
export const length = (a: Point): number => Math.sqrt(a.x * a.x + a.y * a.y);
export const distance = (a: Point, b: Point): number => Math.sqrt((b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y));
export const midpoint = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
export const lerp = (a: Point, b: Point, t: number): Point => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });

/** From `a` by `by` along the direction `d`. */
export const along = (a: Point, d: Point, by: number): Point => ({ x: a.x + d.x * by, y: a.y + d.y * by });

/** Unit vector of a direction; (0, 0) stays. */
export function normalize(a: Point): Point {
  const size = length(a);
  return size === 0 ? { x: 0, y: 0 } : { x: a.x / size, y: a.y / size };
}

/** Unit direction from a to b; (0, 0) where both are the same. */
export const directionTo = (a: Point, b: Point): Point => normalize(sub(b, a));

/** Turned a quarter clockwise on the paper: the right hand of a person walking along `d`. */
export const rightOf = (d: Point): Point => ({ x: 0 - d.y, y: d.x + 0 });

/** Turned a quarter counter-clockwise on the paper: the left hand of a person walking along `d`. */
export const leftOf = (d: Point): Point => ({ x: d.y + 0, y: 0 - d.x });

export const isNear = (a: Point, b: Point, tolerance = 1e-6): boolean => distance(a, b) <= tolerance;
