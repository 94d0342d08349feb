import { along, edgesOf, type Point, rayToSegment, rightOf, scale } from '../../geometry';
import type { Readout } from '../types';
import { type Box, cornersOfBox } from './box';
import type { Targets } from './snapBoxes';

/** Farther than this a distance says nothing while dragging, mm. */
const FARTHEST = 6000;

/** Free distances from the middle of each side of a box to the next wall or thing. */
export function distancesAround(box: Box, targets: Targets): Readout[] {
  const edges = [
    ...targets.walls,
    ...targets.boxes.filter(({ hu, hv }) => hu > 0 && hv > 0).flatMap((other) => edgesOf(cornersOfBox(other))),
  ];
  const v = rightOf(box.u);
  const sides: [Point, number][] = [
    [box.u, box.hu],
    [scale(box.u, -1), box.hu],
    [v, box.hv],
    [scale(v, -1), box.hv],
  ];
  return sides.flatMap(([n, half]) => {
    const from = along(box.centre, n, half);
    const value = edges.reduce((least, edge) => Math.min(least, rayToSegment(from, n, edge) ?? Infinity), Infinity);
    return value > 0.5 && value <= FARTHEST ? [{ kind: 'distance' as const, from, to: along(from, n, value), value }] : [];
  });
}
