import { along, distance, type Point } from '../../geometry';
import { direction } from '../support/vec';

/** A place on a path: the point and the direction of travel there. */
export interface PathPlace {
  point: Point;
  heading: Point;
}

/** The place `s` along a path from its start; beyond its ends it goes straight on. */
export function placeOnPath(path: readonly Point[], s: number): PathPlace {
  let left = s;
  for (let i = 0; i + 1 < path.length; i += 1) {
    const [a, b] = [path[i], path[i + 1]];
    if (a === undefined || b === undefined) break;
    const length = distance(a, b);
    const heading = direction(a, b);
    if (left <= length || i + 2 === path.length) return { point: along(a, heading, left), heading };
    left -= length;
  }
  return { point: path[0] ?? { x: 0, y: 0 }, heading: { x: 1, y: 0 } };
}

/** Distances along a path of its inner corners. */
export function cornersOfPath(path: readonly Point[]): number[] {
  const lengths = path.slice(1).map((b, i) => distance(path[i] ?? b, b));
  return lengths.slice(0, -1).map((_, i) => lengths.slice(0, i + 1).reduce((sum, length) => sum + length, 0));
}
