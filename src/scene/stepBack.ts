import {
  add,
  along,
  type Bounds,
  boundsOf,
  containsPoint,
  distanceBetweenConvex,
  distanceToOutline,
  edgesOf,
  isNearBounds,
  normalize,
  type Point,
  type Polygon,
} from '../geometry';
import type { Line, Scene } from './types';

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
  obstacles: readonly Polygon[],
): Point {
  if (inside === null) return stand.centre;
  const back = normalize(inside.normals.reduce(add, { x: 0, y: 0 }));
  const least = stand.width / 2 - SLACK;
  const bodies = [...obstacles, ...edgesOf(room.outline).map(({ a, b }) => [a, b])].map((polygon) => ({
    polygon,
    bounds: boundsOf(polygon),
  }));
  let best: { point: Point; clearance: number } | null = null;
  for (let step = STEP; step <= REACH; step += STEP) {
    const point = along(inside.corner, back, step);
    const clearance = clearanceAt(room.outline, bodies, point);
    if (clearance < least || clearance <= (best?.clearance ?? 0) + 1e-6) continue;
    if (isFreeStep([stand.centre, point], bodies, least)) best = { point, clearance };
  }
  return best?.point ?? stand.centre;
}

function isFreeStep(step: Polygon, bodies: readonly Standing[], least: number): boolean {
  const box = boundsOf(step);
  return bodies.every(({ polygon, bounds }) => !isNearBounds(box, bounds, least) || distanceBetweenConvex(step, polygon) >= least);
}

interface Standing {
  polygon: Polygon;
  bounds: Bounds;
}

/** From a place to what stands nearest, walls among them; 0 in something or out of the room. Boxes are looked at before bodies. */
function clearanceAt(outline: Polygon, bodies: readonly Standing[], p: Point): number {
  if (!containsPoint(outline, p)) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const { polygon, bounds } of bodies) {
    if (distanceToBounds(bounds, p) >= least) continue;
    if (polygon.length > 2 && containsPoint(polygon, p)) return 0;
    least = Math.min(least, distanceToOutline(polygon, p));
  }
  return least;
}

function distanceToBounds({ minX, minY, maxX, maxY }: Bounds, { x, y }: Point): number {
  const across = Math.max(0, minX - x, x - maxX);
  const down = Math.max(0, minY - y, y - maxY);
  return Math.sqrt(across * across + down * down);
}
