import { add, along, containsPoint, distanceBetweenConvex, distanceToOutline, normalize, type Point, type Polygon } from '../../geometry';
import type { Line, Scene } from '../../scene';

/** How far from the machine the operator steps back to let somebody pass, and in what steps it is tried. */
const REACH = 1500;
const STEP = 75;

/** The standing place is found to a millimetre or two. */
const SLACK = 2;

/**
 * The roomiest place straight back from the machine, inside the turn, that the operator reaches
 * with a free step. The standing place itself is as near to the controls as a person fits, so its
 * own width says nothing about the aisle behind it.
 */
export function stepBack({ room }: Scene, { inside }: Line, stand: NonNullable<Line['stand']>, obstacles: readonly Polygon[]): Point {
  if (inside === null) return stand.centre;
  const back = normalize(inside.normals.reduce(add, { x: 0, y: 0 }));
  const least = stand.width / 2 - SLACK;
  let best: { point: Point; clearance: number } | null = null;
  for (let step = STEP; step <= REACH; step += STEP) {
    const point = along(inside.corner, back, step);
    const clearance = clearanceAt(room.outline, obstacles, point);
    if (clearance < least || clearance <= (best?.clearance ?? 0) + 1e-6) continue;
    if (isFreeStep([stand.centre, point], obstacles, least)) best = { point, clearance };
  }
  return best?.point ?? stand.centre;
}

const isFreeStep = (step: Polygon, obstacles: readonly Polygon[], least: number) =>
  obstacles.every((obstacle) => distanceBetweenConvex(step, obstacle) >= least);

/** From a place to what stands nearest; 0 in something or out of the room. */
function clearanceAt(outline: Polygon, obstacles: readonly Polygon[], p: Point): number {
  if (!containsPoint(outline, p) || obstacles.some((obstacle) => containsPoint(obstacle, p))) return 0;
  return obstacles.reduce((least, obstacle) => Math.min(least, distanceToOutline(obstacle, p)), distanceToOutline(outline, p));
}
