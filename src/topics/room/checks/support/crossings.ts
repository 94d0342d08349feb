import { cross, distance, lerp, type Point, type Segment, sub } from '../../../../geometry';

/** Ways that come this near without passing each other only touch. */
const TOUCH = 1;

/** Places where two ways cross, in the order of the first. Ways that only touch, or share a stretch, do not cross. */
export function findCrossings(one: readonly Point[], other: readonly Point[]): Point[] {
  return legsOf(one).flatMap((leg) =>
    legsOf(other)
      .map((against) => crossing(leg, against))
      .filter((found) => found !== null),
  );
}

const legsOf = (way: readonly Point[]): Segment[] =>
  way.slice(1).flatMap((b, i) => {
    const a = way[i] as Point;
    return distance(a, b) > TOUCH ? [{ a, b }] : [];
  });

/** Each has its ends on both sides of the other, and clear of it. */
function crossing(s: Segment, r: Segment): Point | null {
  const [from, to] = [sideOf(s, r.a), sideOf(s, r.b)];
  const [start, end] = [sideOf(r, s.a), sideOf(r, s.b)];
  if (!isParted(from, to) || !isParted(start, end)) return null;
  return lerp(s.a, s.b, start / (start - end));
}

const isParted = (one: number, other: number) => one * other < 0 && Math.min(Math.abs(one), Math.abs(other)) > TOUCH;

/** Distance of a point from the line of a segment; positive on its right. */
const sideOf = ({ a, b }: Segment, p: Point) => cross(sub(b, a), sub(p, a)) / distance(a, b);
