import { dot, type Point, type Polygon, scale } from '../../geometry';
import type { Scene, Wall } from '../../scene';
import type { Formatter } from '../../units';
import { WALL_THICKNESS } from '../support/ink';
import { figures } from './figures';
import { outside } from './roomRows';
import type { RoomSide } from './sidesOfRoom';
import type { DimensionRequest, Span, SpanEnd } from './types';

/** How far from a wall a thing's edge may be for the thing to stand along it. */
const ALONG_WALL = 160;
/** Gaps shorter than this are joints: the findings tell of them, the chain does not. */
const LEAST_GAP = 25;

/** The chain of what stands along the walls of a side: from the corner to the first thing, each thing, the gaps between. */
export function createEquipmentRows(scene: Scene, side: RoomSide, f: Formatter, unit: number): DimensionRequest[] {
  const bodies = bodiesOf(scene);
  const spans = side.walls.flatMap((wall) =>
    chain(
      bodies.flatMap((body) => footOn(body, wall, side)),
      wall,
      side,
      f,
    ),
  );
  return spans.length === 0 ? [] : [outside(side, spans, unit)];
}

/** Something that can stand along a wall. */
interface Body {
  subject: string;
  isMachine: boolean;
  polygon: Polygon;
  /** The plan's field for the edge along a direction; undefined where there is none. */
  fieldAlong: (axis: Point) => Span['edit'];
}

/** Its stretch along the wall. */
interface Foot {
  subject: string;
  isMachine: boolean;
  from: Point;
  to: Point;
  edit: Span['edit'];
}

function bodiesOf(scene: Scene): Body[] {
  const machines = scene.machines.map(
    ({ machine, footprint }): Body => ({ subject: machine.id, isMachine: true, polygon: footprint, fieldAlong: () => undefined }),
  );
  const things = scene.things.map(
    ({ thing, polygon, front }, i): Body => ({
      subject: thing.id,
      isMachine: false,
      polygon,
      fieldAlong: (axis) => ['things', i, Math.abs(dot(axis, front)) > 0.5 ? 'depth' : 'width'],
    }),
  );
  return [...machines, ...scene.tables.flatMap((table, i) => legsOf(table, i)), ...things];
}

function legsOf({ table, deck, path }: Scene['tables'][number], index: number): Body[] {
  return deck.map((polygon, leg) => {
    const [a, b] = [path[leg], path[leg + 1]];
    const heading = a === undefined || b === undefined ? { x: 1, y: 0 } : { x: b.x - a.x, y: b.y - a.y };
    const isAlong = (axis: Point) => Math.abs(dot(axis, heading)) > 0.9 * Math.hypot(heading.x, heading.y);
    const length = table.legs.length === 1 ? ['tables', index, 'legs', leg, 'length'] : undefined;
    return { subject: table.id, isMachine: false, polygon, fieldAlong: (axis) => (isAlong(axis) ? length : ['tables', index, 'depth']) };
  });
}

/** The edge of a body that is parallel and near to a wall, inside its length. */
function footOn(body: Body, wall: Wall, { axis }: RoomSide): Foot[] {
  for (const [i, a] of body.polygon.entries()) {
    const b = body.polygon[(i + 1) % body.polygon.length];
    if (b === undefined || !isAlongWall(a, b, wall)) continue;
    const [from, to] = [a, b].toSorted((p, q) => dot(p, axis) - dot(q, axis));
    if (from !== undefined && to !== undefined)
      return [{ subject: body.subject, isMachine: body.isMachine, from, to, edit: body.fieldAlong(axis) }];
  }
  return [];
}

function isAlongWall(a: Point, b: Point, wall: Wall): boolean {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const depth = (p: Point) => (p.x - wall.a.x) * wall.inward.x + (p.y - wall.a.y) * wall.inward.y;
  const t = (p: Point) => (p.x - wall.a.x) * wall.direction.x + (p.y - wall.a.y) * wall.direction.y;
  const isNear = Math.max(depth(a), depth(b)) < ALONG_WALL && Math.min(depth(a), depth(b)) > -ALONG_WALL / 2;
  const isBeside = Math.max(t(a), t(b)) > 0 && Math.min(t(a), t(b)) < wall.length;
  return length > LEAST_GAP && isNear && isBeside && Math.abs(depth(a) - depth(b)) < length * 0.01;
}

/**
 * Feet in order from the corner that the line is set out from; one that overlaps its neighbour is left to a dimension of
 * its own, and the rest of the wall follows from its length (ISO 129-1: no closed chains).
 */
function chain(found: readonly Foot[], wall: Wall, side: RoomSide, f: Formatter): Span[] {
  if (found.length === 0) return [];
  const isReversed = startsAtFarEnd(found, wall, side);
  const { outward } = side;
  const axis = isReversed ? scale(side.axis, -1) : side.axis;
  const feet = isReversed ? found.map(({ from, to, ...rest }) => ({ ...rest, from: to, to: from })) : found;
  const t = (p: Point) => dot(p, axis);
  const face = dot(wall.a, outward);
  const end = (point: Point): SpanEnd => ({ point, lift: Math.max(0, face - dot(point, outward)) + WALL_THICKNESS });
  const start = t(wall.a) < t(wall.b) ? wall.a : wall.b;
  const spans: Span[] = [];
  let last = start;
  for (const foot of feet.toSorted((p, q) => t(p.from) - t(q.from) || t(q.to) - t(p.to))) {
    if (t(foot.from) < t(last) - LEAST_GAP) continue;
    const gap = t(foot.from) - t(last);
    if (gap >= LEAST_GAP) spans.push({ from: end(last), to: end(foot.from), text: figures(f, gap), subject: foot.subject });
    spans.push({
      from: end(foot.from),
      to: end(foot.to),
      text: figures(f, t(foot.to) - t(foot.from)),
      subject: foot.subject,
      ...(foot.edit === undefined ? {} : { edit: foot.edit }),
    });
    last = foot.to;
  }
  return spans;
}

/** Whether the chain begins at the wall's end that is farther along the axis: the end that the machine, or else anything, is nearer to. */
function startsAtFarEnd(feet: readonly Foot[], wall: Wall, { axis }: RoomSide): boolean {
  const [low = 0, high = 0] = [wall.a, wall.b].map((p) => dot(p, axis)).toSorted((a, b) => a - b);
  const deciding = feet.filter((foot) => foot.isMachine);
  const told = deciding.length > 0 ? deciding : feet;
  const before = Math.min(...told.map((foot) => dot(foot.from, axis))) - low;
  const after = high - Math.max(...told.map((foot) => dot(foot.to, axis)));
  return after < before - 1;
}
