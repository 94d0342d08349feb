import { dot } from '../../geometry';
import type { PlacedOpening, Scene, Wall } from '../../scene';
import type { Formatter } from '../../units';
import { WALL_THICKNESS } from '../support/ink';
import { figures } from './figures';
import type { RoomSide } from './sidesOfRoom';
import { DIMENSION, type DimensionRequest, type Span, type SpanEnd } from './types';

/** Chains of a room's openings, one line for each side that has any. */
export function createOpeningRows(scene: Scene, side: RoomSide, f: Formatter, unit: number): DimensionRequest[] {
  const spans = side.walls.flatMap((wall) => spansOfWall(scene, wall, f));
  return spans.length === 0 ? [] : [outside(side, spans, unit)];
}

/** Lengths of the walls that face a side: where the room has a step in it, or the wall is at an odd angle. */
export function createWallRows(scene: Scene, side: RoomSide, f: Formatter, unit: number): DimensionRequest[] {
  const isWhole = side.walls.length === 1 && Math.abs((side.walls[0]?.length ?? 0) - (side.to - side.from)) < 1;
  return isWhole && side.isMain
    ? []
    : [
        outside(
          side,
          side.walls.map((wall) => wallSpan(scene, wall, f)),
          unit,
        ),
      ];
}

/** The whole room along a side. Where one wall spans it, the number is that wall's length. */
export function createOverallRow(scene: Scene, side: RoomSide, f: Formatter, unit: number): DimensionRequest {
  const whole = side.walls.find((wall) => Math.abs(wall.length - (side.to - side.from)) < 1);
  if (whole !== undefined) return outside(side, [wallSpan(scene, whole, f)], unit);
  const corner = (t: number): SpanEnd => {
    const nearest = scene.room.outline
      .filter((p) => Math.abs(dot(p, side.axis) - t) < 1)
      .toSorted((p, q) => dot(q, side.outward) - dot(p, side.outward))[0];
    return { point: nearest ?? { x: 0, y: 0 }, lift: WALL_THICKNESS };
  };
  return outside(side, [{ from: corner(side.from), to: corner(side.to), text: figures(f, side.to - side.from) }], unit);
}

/** Lines outside the room may run at each half step, the last of them so many steps out. */
const TIERS = 9;

/** A request for a line outside the room: the nearest tier first. */
export function outside(side: RoomSide, spans: Span[], unit: number): DimensionRequest {
  const tiers = Array.from({ length: 2 * TIERS - 1 }, (_, i) => i / 2);
  const base = (side.reach + WALL_THICKNESS) / unit + DIMENSION.first;
  return {
    side: `${side.outward.x.toFixed(4)} ${side.outward.y.toFixed(4)}`,
    rows: tiers.map((tier) => ({ axis: side.axis, spans, across: base + tier * DIMENSION.step, cost: tier * 1.5 })),
  };
}

function wallSpan({ plan }: Scene, wall: Wall, f: Formatter): Span {
  const index = plan.room.outline.findIndex((corner) => corner.id === wall.id);
  return {
    from: { point: wall.a, lift: WALL_THICKNESS },
    to: { point: wall.b, lift: WALL_THICKNESS },
    text: figures(f, wall.length),
    edit: ['room', 'outline', index, 'length'],
    subject: wall.id,
  };
}

/** From the wall's start to the first opening, its width, the pier to the next, … The rest of the wall follows from its length. */
function spansOfWall(scene: Scene, wall: Wall, f: Formatter): Span[] {
  const placed = scene.room.openings.filter((opening) => opening.wall.id === wall.id).toSorted((a, b) => a.opening.from - b.opening.from);
  return placed.flatMap((opening, i) => {
    const before = placed[i - 1];
    const start = before?.segment.b ?? wall.a;
    const gap = opening.opening.from - (before === undefined ? 0 : before.opening.from + before.opening.width);
    const pier =
      gap < 5
        ? []
        : [
            createSpan(
              start,
              opening.segment.a,
              gap,
              f,
              before === undefined ? fieldOf(scene, opening, 'from') : undefined,
              opening.opening.id,
            ),
          ];
    return [
      ...pier,
      createSpan(opening.segment.a, opening.segment.b, opening.opening.width, f, fieldOf(scene, opening, 'width'), opening.opening.id),
    ];
  });
}

const fieldOf = ({ plan }: Scene, { opening }: PlacedOpening, field: 'from' | 'width') => [
  'room',
  'openings',
  plan.room.openings.findIndex((item) => item.id === opening.id),
  field,
];

function createSpan(a: Wall['a'], b: Wall['b'], length: number, f: Formatter, edit: Span['edit'], subject: string): Span {
  const end = (point: Wall['a']): SpanEnd => ({ point, lift: WALL_THICKNESS });
  return { from: end(a), to: end(b), text: figures(f, length), ...(edit === undefined ? {} : { edit }), subject };
}
