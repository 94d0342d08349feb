import { add, along, type Body, boundsOf, distanceBetweenConvex, isNearBounds, normalize, type Point, type Polygon } from '../../geometry';
import type { Line, Scene } from '../types';
import { clearanceAt, createFloor, type Floor } from './standBefore';

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
export function stepBack(
  { room }: Pick<Scene, 'room'>,
  { inside }: Line,
  stand: NonNullable<Line['stand']>,
  obstacles: readonly Body[],
): Point {
  if (inside === null) return stand.centre;
  const back = normalize(inside.normals.reduce(add, { x: 0, y: 0 }));
  const least = stand.width / 2 - SLACK;
  const floor = createFloor(room.outline, obstacles);
  let best: { point: Point; clearance: number } | null = null;
  // From one step to the next no place gets roomier by more than the step.
  let most = Number.POSITIVE_INFINITY;
  for (let step = STEP; step <= REACH; step += STEP) {
    most += STEP;
    const wanted = Math.max(least, (best?.clearance ?? 0) + 1e-6);
    if (most < wanted) continue;
    const point = along(inside.corner, back, step);
    const clearance = clearanceAt(floor, point);
    most = clearance;
    if (clearance < least || clearance <= (best?.clearance ?? 0) + 1e-6) continue;
    if (isFreeStep([stand.centre, point], floor, least)) best = { point, clearance };
  }
  return best?.point ?? stand.centre;
}

function isFreeStep(step: Polygon, { bodies }: Floor, least: number): boolean {
  const box = boundsOf(step);
  return bodies.every(({ polygon, bounds }) => !isNearBounds(box, bounds, least) || distanceBetweenConvex(step, polygon) >= least);
}
