import { directionTo, distance, type Point, type Point3, type Polygon, rectangle } from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedRun, Solid } from '../types';
import { createSolid } from './createSolid';

/** A square prism around each leg of the run, as wide as the duct. */
export const deriveRunSolids = memoizeByIdentity(({ run, points }: PlacedRun): Solid[] =>
  points.slice(1).map((to, i) => aroundLeg(run.id, points[i] ?? to, to, run.diameter / 2)),
);

function aroundLeg(owner: string, from: Point3, to: Point3, radius: number): Solid {
  const [low, high] = [Math.min(from.z, to.z), Math.max(from.z, to.z)];
  const across = distance(from, to);
  // A leg that rises steeply is thick in plan and ends at its heights; a flat one is thick in height.
  const isUpright = across < high - low;
  return createSolid({
    owner,
    kind: 'run',
    pieces: [planOfLeg(from, to, across, radius)],
    zFrom: isUpright ? low : low - radius,
    zTo: isUpright ? high : high + radius,
  });
}

function planOfLeg(from: Point, to: Point, across: number, radius: number): Polygon {
  if (across < 1e-6) return rectangle({ origin: from, rotationDeg: 0 }, -radius, -radius, radius, radius);
  const d = directionTo(from, to);
  return [
    { x: from.x + d.y * radius, y: from.y - d.x * radius },
    { x: to.x + d.y * radius, y: to.y - d.x * radius },
    { x: to.x - d.y * radius, y: to.y + d.x * radius },
    { x: from.x - d.y * radius, y: from.y + d.x * radius },
  ];
}
