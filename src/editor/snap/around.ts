import { along, dot, edgesOf, type Point, rayToSegment, rightOf, scale } from '../../geometry';
import type { Readout } from '../types';
import { type Box, cornersOfBox, extentOf } from './box';
import type { Targets } from './snapBoxes';

/** Farther than this a distance says nothing while dragging, mm. */
const FARTHEST = 6000;

/** Free distances from the middle of each side of a box to the next wall or thing; from the far side of what moves with it, where that lies in between. */
export function distancesAround(box: Box, targets: Targets, together: readonly Box[] = []): Readout[] {
  const solid = targets.boxes.filter(({ hu, hv }) => hu > 0 && hv > 0);
  const edges = [...targets.walls, ...solid.flatMap((other) => edgesOf(cornersOfBox(other)))];
  const v = rightOf(box.u);
  return [box.u, scale(box.u, -1), v, scale(v, -1)].flatMap((n) => {
    const from = along(box.centre, n, reachAlong(box, n, together));
    const value = edges.reduce((least, edge) => Math.min(least, rayToSegment(from, n, edge) ?? Infinity), Infinity);
    return value > 0.5 && value <= FARTHEST ? [{ kind: 'distance' as const, from, to: along(from, n, value), value }] : [];
  });
}

/** From the centre of a box to its side, or to the far side of what moves with it and lies across the way. */
function reachAlong(box: Box, n: Point, together: readonly Box[]): number {
  const at = dot(box.centre, n);
  const aside = dot(box.centre, rightOf(n));
  const isAcross = (other: Box) => {
    const side = extentOf(other, rightOf(n));
    return side.min <= aside && aside <= side.max;
  };
  return Math.max(...[box, ...together.filter(isAcross)].map((each) => extentOf(each, n).max - at));
}
