import { dot, lerp, type Point, rightOf, type Segment, sub } from '../../geometry';
import type { Box } from './box';

/** What is left of a line where boxes, grown by `clearance`, lie over it: a drawn line stops short of letters. */
export function cutLine({ a, b }: Segment, boxes: readonly Box[], clearance: number): Segment[] {
  const taken = boxes.flatMap((box) => spanInBox(a, b, box, clearance)).toSorted((p, q) => p[0] - q[0]);
  const pieces: Segment[] = [];
  let from = 0;
  for (const [low, high] of taken) {
    if (low > from) pieces.push({ a: lerp(a, b, from), b: lerp(a, b, low) });
    from = Math.max(from, high);
  }
  if (from < 1) pieces.push({ a: lerp(a, b, from), b });
  return pieces;
}

/** The part of a line inside a box, as shares of its length; clipped by the two slabs of the box. */
function spanInBox(a: Point, b: Point, box: Box, clearance: number): [number, number][] {
  const along = clip(dot(sub(a, box.centre), box.d), dot(sub(b, box.centre), box.d), box.halfLength + clearance);
  const n = rightOf(box.d);
  const across = clip(dot(sub(a, box.centre), n), dot(sub(b, box.centre), n), box.halfHeight + clearance);
  const [low, high] = [Math.max(along[0], across[0], 0), Math.min(along[1], across[1], 1)];
  return high > low ? [[low, high]] : [];
}

function clip(from: number, to: number, half: number): [number, number] {
  if (Math.abs(to - from) < 1e-12) return Math.abs(from) < half ? [0, 1] : [1, 0];
  const [p, q] = [(-half - from) / (to - from), (half - from) / (to - from)];
  return p < q ? [p, q] : [q, p];
}
