import { along, distance, distanceBetweenConvex, lerp, offsetConvex, type Point, type Polygon, type Segment } from '../../geometry';
import type { PlacedOpening, Wall } from '../../scene';

/**
 * The room with a bay behind an opening, up to `size` wide and deep, and a place in the middle of
 * the bay. A way that begins there comes in through the opening with nothing but the room before it.
 */
export function openOutward(
  outline: Polygon,
  walls: readonly Wall[],
  { wall, centre }: PlacedOpening,
  size: number,
): { room: Polygon; from: Point } {
  const bay = findBay(walls, wall, centre, size);
  const [start, end, outerEnd, outerStart] = bay;
  const room = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    // The outline may be walked the other way round than the wall.
    if (isSame(a, wall.a) && isSame(b, wall.b)) return [a, start, outerStart, outerEnd, end];
    return isSame(a, wall.b) && isSame(b, wall.a) ? [a, end, outerEnd, outerStart, start] : [a];
  });
  return { room: withoutRepeats(room), from: lerp(start, outerEnd, 0.5) };
}

type Bay = [Point, Point, Point, Point];

/** Half the size where another wall of the room, around a corner, would cut through the bay. */
function findBay(walls: readonly Wall[], wall: Wall, centre: Point, size: number): Bay {
  const bay = bayAt(wall, centre, size);
  const inner = offsetConvex(bay, -1);
  const isCut = walls.some((other) => other !== wall && distanceBetweenConvex(inner, [other.a, other.b]) === 0);
  return isCut ? bayAt(wall, centre, size / 2) : bay;
}

function bayAt(wall: Wall, centre: Point, size: number): Bay {
  const at = distance(wall.a, centre);
  const start = along(wall.a, wall.direction, Math.max(0, at - size / 2));
  const end = along(wall.a, wall.direction, Math.min(wall.length, at + size / 2));
  return [start, end, along(end, wall.inward, -size), along(start, wall.inward, -size)];
}

const isSame = (p: Point, q: Segment['a']) => distance(p, q) < 1e-6;

const withoutRepeats = (polygon: Point[]): Polygon => polygon.filter((p, i) => !isSame(p, polygon.at(i - 1) as Point));
