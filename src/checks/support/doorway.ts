import { along, distance, lerp, nearestOnSegment, type Point, type Polygon, type Segment } from '../../geometry';
import type { PlacedOpening } from '../../scene';

/**
 * The room with a bay behind an opening, so wide and deep where the wall is long enough, and a place
 * in the middle of the bay. A way that begins there comes in through the opening with nothing but
 * the room before it.
 */
export function openOutward(outline: Polygon, { wall, centre }: PlacedOpening, width: number): { room: Polygon; from: Point } {
  const at = distance(wall.a, centre);
  const [start, end] = [Math.max(0, at - width / 2), Math.min(wall.length, at + width / 2)].map((s) => along(wall.a, wall.direction, s)) as [Point, Point];
  const out = (p: Point) => along(p, wall.inward, -width);
  const room = outline.flatMap((a, i) => {
    const edge: Segment = { a, b: outline[(i + 1) % outline.length] as Point };
    if (!isWall(edge, wall)) return [a];
    const [first, last] = distance(a, start) < distance(a, end) ? [start, end] : [end, start];
    return [a, first, out(first), out(last), last];
  });
  return { room: withoutRepeats(room), from: lerp(lerp(start, end, 0.5), out(lerp(start, end, 0.5)), 0.5) };
}

/** The outline may be walked the other way round than the wall. */
const isWall = (edge: Segment, wall: Segment) =>
  distance(edge.a, edge.b) > 0 && [edge.a, edge.b].every((p) => distance(p, nearestOnSegment(p, wall).point) < 1e-6);

const withoutRepeats = (polygon: Point[]): Polygon => polygon.filter((p, i) => distance(p, polygon.at(i - 1) as Point) > 1e-6);
