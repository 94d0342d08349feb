import { along, distance, lerp, nearestOnSegment, type Point, type Polygon, type Segment } from '../../geometry';
import type { PlacedOpening } from '../../scene';

/**
 * The room with a bay behind an opening, as wide and as deep as the opening, and a place in the
 * middle of the bay. A way that begins there passes between the jambs, so that the opening's own
 * clear width counts.
 */
export function openOutward(outline: Polygon, { segment, wall, centre }: PlacedOpening): { room: Polygon; from: Point } {
  const width = distance(segment.a, segment.b);
  const out = (p: Point) => along(p, wall.inward, -width);
  const room = outline.flatMap((a, i) => {
    const edge: Segment = { a, b: outline[(i + 1) % outline.length] as Point };
    if (!isWall(edge, wall)) return [a];
    const [first, last] = distance(a, segment.a) < distance(a, segment.b) ? [segment.a, segment.b] : [segment.b, segment.a];
    return [a, first, out(first), out(last), last];
  });
  return { room: withoutRepeats(room), from: lerp(centre, out(centre), 0.5) };
}

/** The outline may be walked the other way round than the wall. */
const isWall = (edge: Segment, wall: Segment) =>
  [edge.a, edge.b].every((p) => distance(p, nearestOnSegment(p, wall).point) < 1e-6) && distance(edge.a, edge.b) > 0;

const withoutRepeats = (polygon: Point[]): Polygon => polygon.filter((p, i) => distance(p, polygon.at(i - 1) as Point) > 1e-6);
