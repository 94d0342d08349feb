/** Small angles-and-vectors help for the document: degrees clockwise on the paper, y down. */

export interface Vector {
  x: number;
  y: number;
}

/** Cosine and sine of an angle, exact at quarter turns so that a plan turned there and back is the same plan. */
export function direction(deg: number): Vector {
  const quarters = deg / 90;
  if (Number.isInteger(quarters)) return QUARTERS[((quarters % 4) + 4) % 4] ?? { x: 1, y: 0 };
  const rad = (deg * Math.PI) / 180;
  return { x: Math.cos(rad), y: Math.sin(rad) };
}

const QUARTERS: readonly Vector[] = [
  { x: 1, y: 0 },
  { x: 0, y: 1 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
];

/** A vector turned clockwise about the origin. Never gives a negative zero. */
export function turn(v: Vector, deg: number): Vector {
  const d = direction(deg);
  return { x: v.x * d.x - v.y * d.y + 0, y: v.x * d.y + v.y * d.x + 0 };
}

/** An angle as the document stores it: within a full turn either way. */
export function storedDeg(deg: number): number {
  return (Math.abs(deg) > 360 ? deg % 360 : deg) + 0;
}

/** Angle of a vector, degrees from −180 to 180. */
export function headingOf(v: Vector): number {
  return (Math.atan2(v.y, v.x) * 180) / Math.PI;
}
