import { lerp, type Segment } from '../../geometry';
import type { Box } from './box';

/** What is left of a line where boxes, grown by `clearance`, lie over it: a drawn line stops short of letters. */
export function cutLine({ a, b }: Segment, boxes: readonly Box[], clearance: number): Segment[] {
  const taken: [number, number][] = [];
  for (const box of boxes) {
    const span = spanInBox({ a, b }, box, clearance);
    if (span !== null) taken.push(span);
  }
  if (taken.length === 0) return [{ a, b }];
  const pieces: Segment[] = [];
  let from = 0;
  for (const [low, high] of taken.sort((p, q) => p[0] - q[0])) {
    if (low > from) pieces.push({ a: lerp(a, b, from), b: lerp(a, b, low) });
    from = Math.max(from, high);
  }
  if (from < 1) pieces.push({ a: lerp(a, b, from), b });
  return pieces;
}

/** The part of a line inside a box, as shares of its length, by the two slabs of the box; plain numbers, as it runs often. */
function spanInBox({ a, b }: Segment, { centre, d, halfLength, halfHeight }: Box, clearance: number): [number, number] | null {
  const [ax, ay, bx, by] = [a.x - centre.x, a.y - centre.y, b.x - centre.x, b.y - centre.y];
  const far = halfLength + halfHeight + 2 * clearance;
  if (Math.min(ax, bx) > far || Math.max(ax, bx) < -far || Math.min(ay, by) > far || Math.max(ay, by) < -far) return null;
  const long = clip(ax * d.x + ay * d.y, bx * d.x + by * d.y, halfLength + clearance);
  const high = clip(ay * d.x - ax * d.y, by * d.x - bx * d.y, halfHeight + clearance);
  if (long === null || high === null) return null;
  const [from, to] = [Math.max(long[0], high[0], 0), Math.min(long[1], high[1], 1)];
  return to > from ? [from, to] : null;
}

function clip(from: number, to: number, half: number): [number, number] | null {
  if (Math.abs(to - from) < 1e-12) return Math.abs(from) < half ? [0, 1] : null;
  const [p, q] = [(-half - from) / (to - from), (half - from) / (to - from)];
  return p < q ? [p, q] : [q, p];
}
