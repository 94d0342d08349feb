import {
  along,
  boundsOf,
  distance,
  distanceBetweenConvex,
  isNearBounds,
  lerp,
  offsetConvex,
  type Point,
  type Polygon,
} from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedOpening, PlacedRoom, Wall } from '../types';

/** A room with a bay behind an opening, and a place in the middle of the bay. */
export interface Doorway {
  outline: Polygon;
  from: Point;
}

/** A bay as wide and as deep as the opening: a way that begins in it passes between the jambs. */
export const openBay = memoizeByIdentity(
  ({ wall, segment }: PlacedOpening, { outline }: PlacedRoom): Doorway =>
    joinBay(outline, wall, bayBetween(wall, distance(wall.a, segment.a), distance(wall.a, segment.b))),
);

/** A bay of a size, wider than the opening where the wall is long enough: the jambs are out of the way. */
export const openWideBay = memoizeByIdentity(({ wall, centre }: PlacedOpening, { outline, walls }: PlacedRoom, size: number): Doorway => {
  const at = distance(wall.a, centre);
  const bayOf = (width: number) => bayBetween(wall, Math.max(0, at - width / 2), Math.min(wall.length, at + width / 2));
  const bay = bayOf(size);
  const inner = offsetConvex(bay, -1);
  // Around a corner another wall of the room may cut through the bay.
  const box = boundsOf(inner);
  const isCut = walls.some((other) => {
    const across = [other.a, other.b];
    return other !== wall && isNearBounds(box, boundsOf(across)) && distanceBetweenConvex(inner, across) === 0;
  });
  return joinBay(outline, wall, isCut ? bayOf(size / 2) : bay);
});

type Bay = [start: Point, end: Point, outerEnd: Point, outerStart: Point];

/** As deep as it is wide. */
function bayBetween(wall: Wall, from: number, to: number): Bay {
  const [start, end] = [along(wall.a, wall.direction, from), along(wall.a, wall.direction, to)];
  return [start, end, along(end, wall.inward, from - to), along(start, wall.inward, from - to)];
}

function joinBay(outline: Polygon, wall: Wall, [start, end, outerEnd, outerStart]: Bay): Doorway {
  const joined = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    // The outline may be walked the other way round than the wall.
    if (isSame(a, wall.a) && isSame(b, wall.b)) return [a, start, outerStart, outerEnd, end];
    return isSame(a, wall.b) && isSame(b, wall.a) ? [a, end, outerEnd, outerStart, start] : [a];
  });
  return { outline: withoutRepeats(joined), from: lerp(start, outerEnd, 0.5) };
}

const isSame = (p: Point, q: Point) => distance(p, q) < 1e-6;

const withoutRepeats = (polygon: Point[]): Polygon => polygon.filter((p, i) => !isSame(p, polygon.at(i - 1) as Point));
