import { rotate } from './angles';
import { type Bounds, boundsOf, squareToBounds } from './bounds';
import { type Body, wallBodies } from './passageBody';
import { cross, directionTo, distance, lerp, type Point, type Polygon, rightOf, type Segment, sub } from './points';
import { containsPoint, edgesOf, orient } from './polygon';
import { nearestOnSegment } from './segments';

export interface ShapeSearch {
  /** The shape about its own centre: convex pieces, each of which overlaps another: where they only touched, a wall might part them. */
  readonly pieces: readonly Polygon[];
  /** How it may be turned, degrees: only these are tried. */
  readonly headingsDeg: readonly number[];
  readonly room: Polygon;
  readonly obstacles: readonly Body[];
  /** The place to be near. */
  readonly near: Point;
  /** How far from `near` its centre may be, mm. */
  readonly within: number;
}

export interface ShapePlace {
  readonly centre: Point;
  readonly headingDeg: number;
  readonly distance: number;
}

/**
 * The free place nearest to `near` where a shape fits on the floor, in one of a few headings; null when there is none in reach.
 *
 * Exact for each heading: the shape's centre may not come into the sum of a body and the mirrored shape, which is convex for
 * convex pieces. The nearest free place is `near` itself, or on an edge of such a sum the foot of `near` or an end of what the
 * other sums leave of it. Between the headings nothing is tried: a place that only a slanted shape would find is not found.
 */
export function findShapePlace(search: ShapeSearch): ShapePlace | null {
  let best: ShapePlace | null = null;
  for (const headingDeg of search.headingsDeg) {
    const found = placeTurned(search, headingDeg, best?.distance ?? search.within);
    if (found !== null && (best === null || found.distance < best.distance - CLOSE)) best = { headingDeg, ...found };
  }
  return best;
}

/** Touching is allowed; distances that differ by less are one. */
const CLOSE = 1e-5;

function placeTurned(search: ShapeSearch, headingDeg: number, within: number): Omit<ShapePlace, 'headingDeg'> | null {
  const { near, room } = search;
  const pieces = search.pieces.map((piece) => piece.map((p) => rotate(p, headingDeg)));
  const taken = takenFloor(search, pieces, within);
  // Where no wall is cut, the shape is in the room as a whole or not at all.
  if (taken.every((sum) => !isDeepIn(sum, near)) && containsPoint(room, near)) return { centre: near, distance: 0 };
  let best: Omit<ShapePlace, 'headingDeg'> | null = null;
  // From the nearest edge outward: no place on an edge is nearer than the edge, so what is left at the end can't better the best.
  for (const { edge, foot, away } of edgesInReach(taken, near, within)) {
    if (best !== null && away >= (best as ShapePlace).distance) break;
    for (const t of freeEnds(edge, foot, taken)) {
      const centre = lerp(edge.a, edge.b, t);
      const reached = distance(near, centre);
      if (reached <= (best?.distance ?? within) && containsPoint(room, centre)) best = { centre, distance: reached };
    }
  }
  return best;
}

/** Where the centre may not be for one body and one piece; an inner side of the sum is { p : p·n ≥ c }. */
interface Taken {
  sum: Polygon;
  bounds: Bounds;
  sides: readonly { x: number; y: number; c: number }[];
}

const isDeepIn = ({ sides }: Taken, p: Point): boolean => sides.every(({ x, y, c }) => p.x * x + p.y * y - c > CLOSE);

/** The floor that is taken, as far as it is in reach: for each body and each piece the sum of the body and the mirrored piece. */
function takenFloor({ room, obstacles, near }: ShapeSearch, pieces: readonly Polygon[], within: number): Taken[] {
  const bodies = [...obstacles, ...wallBodies(room)];
  const reach = within + Math.max(...pieces.flat().map((p) => Math.hypot(p.x, p.y)));
  return bodies
    .filter(({ bounds }) => squareToBounds(bounds, near) < reach * reach)
    .flatMap(({ polygon }) => pieces.map((piece) => hullOf(polygon.flatMap((b) => piece.map((p) => sub(b, p))))))
    .map((sum) => ({ sum, bounds: boundsOf(sum) }))
    .filter(({ bounds }) => squareToBounds(bounds, near) <= (within + CLOSE) ** 2)
    .map(({ sum, bounds }) => ({ sum, bounds, sides: edgesOf(sum).map(({ a, b }) => sideOf(a, rightOf(directionTo(a, b)))) }));
}

const sideOf = (a: Point, { x, y }: Point) => ({ x, y, c: a.x * x + a.y * y });

interface EdgeInReach {
  edge: Segment;
  /** Where on it the wanted place is nearest, 0…1. */
  foot: number;
  away: number;
}

function edgesInReach(taken: readonly Taken[], near: Point, within: number): EdgeInReach[] {
  return taken
    .flatMap(({ sum }) => edgesOf(sum))
    .map((edge) => {
      const { t, point } = nearestOnSegment(near, edge);
      return { edge, foot: t, away: distance(near, point) };
    })
    .filter(({ away }) => away <= within)
    .sort((a, b) => a.away - b.away);
}

/** Of an edge the foot and the ends of what no sum takes: there the free places nearest to anywhere are. */
function freeEnds(edge: Segment, foot: number, taken: readonly Taken[]): number[] {
  const cuts: Cut[] = [];
  for (const sum of taken) {
    const cut = isBeside(sum.bounds, edge) ? null : cutBy(sum, edge);
    if (cut !== null) cuts.push(cut);
  }
  const ends = [foot, ...cuts.flatMap(({ from, to }) => [from, to]), 0, 1];
  return ends.filter((t) => t >= 0 && t <= 1 && cuts.every(({ from, to }) => t <= from || t >= to));
}

interface Cut {
  from: number;
  to: number;
}

const isBeside = ({ minX, minY, maxX, maxY }: Bounds, { a, b }: Segment): boolean =>
  (a.x <= minX && b.x <= minX) || (a.x >= maxX && b.x >= maxX) || (a.y <= minY && b.y <= minY) || (a.y >= maxY && b.y >= maxY);

/** The open stretch of an edge that lies in a sum, deeper than touching; null where none does. */
function cutBy({ sides }: Taken, { a, b }: Segment): Cut | null {
  let [from, to] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { x, y, c } of sides) {
    const at = a.x * x + a.y * y - c - CLOSE;
    const by = (b.x - a.x) * x + (b.y - a.y) * y;
    if (Math.abs(by) < 1e-12) {
      if (at <= 0) return null;
    } else if (by > 0) from = Math.max(from, -at / by);
    else to = Math.min(to, -at / by);
    if (from >= to) return null;
  }
  return from < 1 && to > 0 ? { from, to } : null;
}

/** The convex outline of points. */
function hullOf(points: Point[]): Polygon {
  const sorted = points.sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (row: readonly Point[]) => {
    const chain: Point[] = [];
    for (const p of row) {
      while (chain.length > 1 && cross(sub(chain.at(-1) as Point, chain.at(-2) as Point), sub(p, chain.at(-2) as Point)) <= 1e-9)
        chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return orient([...half(sorted), ...half(sorted.toReversed())]);
}
