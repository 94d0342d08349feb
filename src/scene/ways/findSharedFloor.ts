import {
  along,
  directionTo,
  distance,
  dot,
  isNear,
  lerp,
  type Point,
  pathLength,
  projectOnPath,
  type Segment,
  slicePath,
  sub,
} from '../../geometry';
import type { Line, PlacedTable } from '../types';

/**
 * Floor that soiled ware of one line and clean ware of any line share: stretches of their ways that come nearer to each other than
 * `width`. On their own tables wares are kept apart by the tables; what is carried over the floor is held against all of the other
 * way. Where both come to the machine they merely meet: of a table the last `width` before its joint is left out.
 */
export function findSharedFloor(line: Line, lines: readonly Line[], width: number): Segment[] {
  const soiled = waysOf(line.ways.soiled, line.soiled, width);
  return lines.flatMap((other) => {
    const clean = waysOf(other.ways.clean, other.clean, width);
    return [
      ...clean.floor.flatMap((leg) => sharedOf(leg, [...soiled.floor, ...soiled.table], width)),
      ...soiled.floor.flatMap((leg) => sharedOf(leg, clean.table, width)),
    ];
  });
}

/** Legs of a way on the floor, and those on its table less what lies before the joint. */
function waysOf(way: readonly Point[], table: PlacedTable | null, width: number): { floor: Segment[]; table: Segment[] } {
  const path = table?.path ?? [];
  const isOn = (p: Point) => path.length > 1 && projectOnPath(path, p).distance < 1;
  const floor = legsOf(way).filter(({ a, b }) => !(isOn(a) && isOn(b) && isOn(lerp(a, b, 0.5))));
  // The path of a table begins at its joint.
  const length = pathLength(path);
  return { floor, table: length > width ? legsOf(slicePath(path, width, length)) : [] };
}

const legsOf = (way: readonly Point[]): Segment[] =>
  way.slice(1).flatMap((b, i) => {
    const a = way[i] as Point;
    return isNear(a, b) ? [] : [{ a, b }];
  });

/** The stretches of a leg that come nearer than `width` to any of others, joined where they overlap. */
function sharedOf(leg: Segment, others: readonly Segment[], width: number): Segment[] {
  const cuts = others
    .map((other) => nearPart(leg, other, width))
    .filter((found) => found !== null)
    .sort((one, other) => one.from - other.from);
  const joined: Part[] = [];
  for (const cut of cuts) {
    const last = joined.at(-1);
    if (last === undefined || cut.from > last.to) joined.push(cut);
    else joined[joined.length - 1] = { from: last.from, to: Math.max(last.to, cut.to) };
  }
  return joined.map(({ from, to }) => ({ a: lerp(leg.a, leg.b, from), b: lerp(leg.a, leg.b, to) }));
}

interface Part {
  from: number;
  to: number;
}

/** Stretches shorter than this only touch. */
const TOUCH = 1;

/** The part of a leg within `width` of another: of a strip beside that and of circles about its ends, which together are convex. */
function nearPart(leg: Segment, other: Segment, width: number): Part | null {
  const parts = [discPart(leg, other.a, width), discPart(leg, other.b, width), stripPart(leg, other, width)].filter(
    (part) => part !== null,
  );
  const [from, to] = [Math.min(...parts.map((part) => part.from)), Math.max(...parts.map((part) => part.to))];
  return parts.length > 0 && (to - from) * distance(leg.a, leg.b) > TOUCH ? { from, to } : null;
}

function discPart({ a, b }: Segment, centre: Point, radius: number): Part | null {
  const size = distance(a, b);
  const d = directionTo(a, b);
  const middle = dot(sub(centre, a), d);
  const away = distance(centre, along(a, d, middle));
  if (away >= radius) return null;
  const half = Math.sqrt(radius * radius - away * away);
  return within((middle - half) / size, (middle + half) / size);
}

function stripPart({ a, b }: Segment, other: Segment, width: number): Part | null {
  const d = directionTo(other.a, other.b);
  const across = { x: -d.y, y: d.x };
  const lengthwise = slab(dot(sub(a, other.a), d), dot(sub(b, other.a), d), 0, distance(other.a, other.b));
  const crosswise = slab(dot(sub(a, other.a), across), dot(sub(b, other.a), across), -width, width);
  if (lengthwise === null || crosswise === null) return null;
  return within(Math.max(lengthwise.from, crosswise.from), Math.min(lengthwise.to, crosswise.to));
}

/** Where a value that goes evenly from one to another lies strictly between two bounds. */
function slab(start: number, end: number, low: number, high: number): Part | null {
  const change = end - start;
  if (Math.abs(change) < 1e-9) return start > low && start < high ? { from: 0, to: 1 } : null;
  const [one, other] = [(low - start) / change, (high - start) / change];
  return within(Math.min(one, other), Math.max(one, other));
}

function within(from: number, to: number): Part | null {
  const part = { from: Math.max(0, from), to: Math.min(1, to) };
  return part.to > part.from ? part : null;
}
