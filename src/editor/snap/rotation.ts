import { angleOf, differenceDeg, normalizeDeg } from '../../geometry';
import type { Wall } from '../../scene';

/** Rotations keep to multiples of this. */
const STEP_DEG = 15;

/** Within this of a wall's own direction, things turn square to the wall. */
const WALL_REACH_DEG = 4;

/** A rotation held to 15°, or square to a wall that stands at another angle. Free: as it is. */
export function snapRotation(deg: number, walls: readonly Wall[], isFree: boolean): number {
  if (isFree) return normalizeDeg(Math.round(deg * 10) / 10);
  const squares = walls.flatMap(({ direction }) => [0, 90, 180, 270].map((turn) => angleOf(direction) + turn));
  const near = squares.find((angle) => Math.abs(differenceDeg(angle, deg)) <= WALL_REACH_DEG);
  const stepped = Math.round(deg / STEP_DEG) * STEP_DEG;
  const isBetter = near !== undefined && Math.abs(differenceDeg(near, deg)) < Math.abs(differenceDeg(stepped, deg));
  return normalizeDeg(isBetter ? near : stepped);
}
