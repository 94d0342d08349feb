import { dot, type Point, rightOf, scale } from '../../geometry';
import type { PlacedRoom, Wall } from '../../scene';

/** The walls that face one way, and the lines outside them on which their dimensions run. */
export interface RoomSide {
  /** Unit direction of measurement; the right hand of it points out of the room. */
  axis: Point;
  /** Unit direction out of the room. */
  outward: Point;
  walls: Wall[];
  /** How far the room reaches outward, plan mm along `outward` from the plan's origin. */
  reach: number;
  /** Ends of the whole room along the axis, plan mm. */
  from: number;
  to: number;
  /** A main side is parallel or square to the longest wall: the room's overall sizes belong to those. */
  isMain: boolean;
}

/** The sides of a room, in the order of its walls. */
export function deriveSides(room: PlacedRoom): RoomSide[] {
  const longest = room.walls.reduce<Wall | null>((best, wall) => (best === null || wall.length > best.length + 1 ? wall : best), null);
  const sides: RoomSide[] = [];
  for (const wall of room.walls) {
    const outward = scale(wall.inward, -1);
    const known = sides.find((side) => dot(side.outward, outward) > 0.99999);
    if (known === undefined) sides.push(createSide(room, wall, outward, longest));
    else known.walls.push(wall);
  }
  return sides.map((side) => (side.isMain ? side : reachOfWalls(side)));
}

function createSide(room: PlacedRoom, wall: Wall, outward: Point, longest: Wall | null): RoomSide {
  const axis = { x: outward.y, y: -outward.x };
  const across = room.outline.map((p) => dot(p, outward));
  const ts = room.outline.map((p) => dot(p, axis));
  const slant = longest === null ? 0 : Math.abs(dot(longest.direction, axis) * dot(longest.direction, rightOf(axis)));
  return { axis, outward, walls: [wall], reach: Math.max(...across), from: Math.min(...ts), to: Math.max(...ts), isMain: slant < 1e-3 };
}

/** Dimensions of a wall at an odd angle stand beside that wall. */
function reachOfWalls(side: RoomSide): RoomSide {
  const ends = side.walls.flatMap((wall) => [wall.a, wall.b]);
  return { ...side, reach: Math.max(...ends.map((p) => dot(p, side.outward))) };
}
