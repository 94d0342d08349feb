import type { Point } from './points';

/** Cosine and sine of an angle in degrees, exact at quarter turns. */
export function cosSin(deg: number): { cos: number; sin: number } {
  const turned = normalizeDeg(deg);
  if (turned === 0) return { cos: 1, sin: 0 };
  if (turned === 90) return { cos: 0, sin: 1 };
  if (turned === 180) return { cos: -1, sin: 0 };
  if (turned === 270) return { cos: 0, sin: -1 };
  const rad = (turned * Math.PI) / 180;
  return { cos: Math.cos(rad), sin: Math.sin(rad) };
}

/** The same angle from 0 up to, not including, 360. */
export function normalizeDeg(deg: number): number {
  if (deg >= 0 && deg < 360) return deg + 0;
  const turned = deg % 360;
  return turned < 0 ? turned + 360 : turned + 0;
}

/** The shortest turn from one angle to another, −180 (not included) to 180. */
export function differenceDeg(from: number, to: number): number {
  const turn = normalizeDeg(to - from);
  return turn > 180 ? turn - 360 : turn;
}

/** A point or direction turned clockwise about the origin; exact at quarter turns. Never gives a negative zero. */
export function rotate(p: Point, deg: number): Point {
  const { cos, sin } = cosSin(deg);
  return { x: p.x * cos - p.y * sin + 0, y: p.x * sin + p.y * cos + 0 };
}

/** Unit direction of an angle: 0 is to the right, clockwise. */
export const directionOf = (deg: number): Point => {
  const { cos, sin } = cosSin(deg);
  return { x: cos, y: sin };
};

/** Angle of a direction, 0 up to 360; 0 is to the right, clockwise. */
export const angleOf = (d: Point): number => normalizeDeg((Math.atan2(d.y, d.x) * 180) / Math.PI);
