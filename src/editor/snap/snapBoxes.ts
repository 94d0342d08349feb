import { along, cross, dot, type Point, rightOf, scale } from '../../geometry';
import type { Wall } from '../../scene';
import type { Guide, GuideKind } from '../types';
import { type Box, extentOf, keepOffAlong } from './box';
import { type Catch, gapBetween, type Span } from './catch';
import { catchWall, type WallLine } from './catchWall';
import { roundTo } from './step';

/** What moving boxes can snap to. */
export interface Targets {
  readonly walls: readonly Wall[];
  readonly boxes: readonly Box[];
  /** Boxes whose edges are a limit to keep: machines grown by the least overhang, for a hood. */
  readonly limits?: readonly Box[];
}

export interface SnapOptions {
  /** How near an edge must come to be caught, mm. */
  readonly reach: number;
  /** Distances to walls keep to this step where nothing catches, mm; 0 for free. */
  readonly step: number;
  /** Catch along the first box's x, its y, or both. */
  readonly axes?: 'u' | 'v' | 'both';
}

export interface Snapped {
  readonly by: Point;
  readonly guides: readonly Guide[];
}

/** How far sideways things may be to be aligned with each other, mm. */
const ALIGN_WITHIN = 3000;

/** Sine of half a degree: nearer than that, two edges count as parallel. */
const PARALLEL = Math.sin((0.5 * Math.PI) / 180);

/** The small move that brings boxes flush, in line or centred, worked out along each axis of the first box by itself. */
export function snapBoxes(moving: readonly Box[], targets: Targets, options: SnapOptions): Snapped {
  const [main] = moving;
  if (main === undefined) return { by: { x: 0, y: 0 }, guides: [] };
  const wanted = options.axes ?? 'both';
  const u = wanted === 'v' ? null : catchAlong(moving, main.u, targets, options);
  const v = wanted === 'u' ? null : catchAlong(moving, rightOf(main.u), targets, options);
  const by = along(scale(main.u, u?.by ?? 0), rightOf(main.u), v?.by ?? 0);
  return { by, guides: [guideOf(u, main.u, by), guideOf(v, rightOf(main.u), by)].flat() };
}

/** The best catch along a direction; else the step to the nearest wall. */
function catchAlong(moving: readonly Box[], n: Point, targets: Targets, options: SnapOptions): Catch | null {
  const m = rightOf(n);
  const boxes = moving.filter((box) => isAlong(box.u, n)).map((box) => spanOf(box, n, m));
  const walls = targets.walls.filter((wall) => isAcross(wall.inward, n)).map((wall) => wallLine(wall, n, m));
  const catches = boxes.flatMap((box) => [
    ...targets.boxes.flatMap((target) => catchBox(box, target, n, m)),
    ...(targets.limits ?? []).flatMap((target) => catchLimit(box, target, n, m)),
  ]);
  const best = [
    ...walls.flatMap((wall) => catchWall(boxes, wall, options.reach)),
    ...catches.filter(({ by }) => Math.abs(by) <= options.reach),
  ].sort((a, b) => a.cost - b.cost)[0];
  return best ?? stepToWall(boxes[0], walls, options.step);
}

const isAlong = (u: Point, n: Point) => Math.abs(cross(u, n)) < PARALLEL || Math.abs(dot(u, n)) < PARALLEL;

const isAcross = (normal: Point, n: Point) => Math.abs(cross(normal, n)) < PARALLEL;

const spanOf = (box: Box, n: Point, m: Point): Span => ({ ...extentOf(box, n), side: extentOf(box, m), keepOff: keepOffAlong(box, n) });

function wallLine(wall: Wall, n: Point, m: Point): WallLine {
  const [a, b] = [dot(wall.a, m), dot(wall.b, m)];
  return { at: dot(wall.a, n), inward: dot(wall.inward, n) > 0 ? 1 : -1, side: { min: Math.min(a, b), max: Math.max(a, b) } };
}

function catchBox(box: Span, target: Box, n: Point, m: Point): Catch[] {
  if (!isAlong(target.u, n)) return [];
  const other = extentOf(target, n);
  const side = extentOf(target, m);
  const apart = gapBetween(box.side, side);
  const row = (kind: GuideKind, from: number, at: number, weight: number): Catch => ({
    by: at - from,
    cost: Math.abs(at - from) * weight,
    kind,
    at,
    from: Math.min(box.side.min, side.min),
    to: Math.max(box.side.max, side.max),
  });
  const flush = apart < -1 ? [row('flush', box.max, other.min, 1), row('flush', box.min, other.max, 1)] : [];
  if (apart > ALIGN_WITHIN) return flush;
  return [
    ...flush,
    row('aligned', box.min, other.min, 1.5),
    row('aligned', box.max, other.max, 1.5),
    row('centred', box.mid, other.mid, 1.4),
  ];
}

function catchLimit(box: Span, target: Box, n: Point, m: Point): Catch[] {
  return catchBox(box, target, n, m)
    .filter(({ kind }) => kind === 'aligned')
    .map((row) => ({ ...row, kind: 'overhang' as const, cost: Math.abs(row.by) }));
}

/** Where nothing catches, the distance to the nearest wall on either side keeps to the step. */
function stepToWall(box: Span | undefined, walls: readonly WallLine[], step: number): Catch | null {
  if (box === undefined || step === 0) return null;
  const facing = walls
    .filter((wall) => gapBetween(box.side, wall.side) <= -1)
    .map((wall) => ({ wall, gap: wall.inward > 0 ? box.min - wall.at : wall.at - box.max }))
    .filter(({ gap }) => gap >= 0)
    .sort((a, b) => a.gap - b.gap)[0];
  if (facing === undefined) return null;
  const by = (roundTo(facing.gap, step) - facing.gap) * facing.wall.inward;
  return { by, cost: 0, kind: 'step', at: 0, from: 0, to: 0 };
}

/** A guide lies on the caught line; a step needs none. */
function guideOf(caught: Catch | null, n: Point, by: Point): Guide[] {
  if (caught === null || caught.kind === 'step') return [];
  const m = rightOf(n);
  const slide = dot(by, m);
  const at = (across: number) => along(scale(n, caught.at), m, across + slide);
  return [{ kind: caught.kind, from: at(caught.from), to: at(caught.to) }];
}
