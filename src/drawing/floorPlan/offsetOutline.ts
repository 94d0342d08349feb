import { add, dot, type Point, type Polygon, scale } from '../../geometry';
import type { Wall } from '../../scene';

/** A very sharp corner would throw its mitre far out: it is held to this many thicknesses. */
const MITRE_LIMIT = 3;

/** The room's outline moved outward by the thickness of the walls, corner by corner in the order of the walls. */
export function offsetOutline(walls: readonly Wall[], thickness: number): Polygon {
  return walls.map((wall, i) => outerCorner(walls.at(i - 1) ?? wall, wall, thickness));
}

function outerCorner(before: Wall, wall: Wall, thickness: number): Point {
  const sum = add(before.inward, wall.inward);
  const share = 1 + dot(before.inward, wall.inward);
  const reach = share < 1e-6 ? MITRE_LIMIT : Math.min(1 / share, MITRE_LIMIT);
  return add(wall.a, scale(sum, -thickness * reach));
}
