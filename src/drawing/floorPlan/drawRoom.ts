import { along, type Point } from '../../geometry';
import type { PlacedOpening, PlacedRoom, Wall } from '../../scene';
import type { Drawing, Prim } from '../drawing';
import { WALL_THICKNESS, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { drawOpening } from './drawOpening';
import { drawRoomThings } from './drawRoomThings';
import { offsetOutline } from './offsetOutline';

/** The room: walls as a hatched band outside the outline, cut at the openings; the openings; columns, drains and stubs. */
export function drawRoom(room: PlacedRoom): Drawing {
  const outer = offsetOutline(room.walls, WALL_THICKNESS);
  const walls = room.walls.flatMap((wall, i) => drawWall(wall, openingsOf(room, wall), [outer[i], outer[(i + 1) % outer.length]]));
  return [...walls, ...room.openings.flatMap(drawOpening), ...drawRoomThings(room)];
}

const openingsOf = (room: PlacedRoom, wall: Wall) => room.openings.filter((placed) => placed.wall.id === wall.id);

/** One wall: the band between its openings, without a seam at the corners. */
function drawWall(wall: Wall, openings: readonly PlacedOpening[], ends: [Point | undefined, Point | undefined]): Prim[] {
  const pen = createPen('room', wall.id);
  const face = (t: number) => along(wall.a, wall.direction, t);
  const back = (t: number) => along(face(t), wall.inward, -WALL_THICKNESS);
  return solidStretches(wall, openings).flatMap(([from, to]) => {
    const outerFrom = from === 0 ? (ends[0] ?? back(0)) : back(from);
    const outerTo = to === wall.length ? (ends[1] ?? back(to)) : back(to);
    const jambs = [...(from === 0 ? [] : [[face(from), outerFrom]]), ...(to === wall.length ? [] : [[face(to), outerTo]])];
    return [
      pen.area([face(from), face(to), outerTo, outerFrom], { fill: 'second', pattern: 'wall' }),
      pen.line([face(from), face(to)], { stroke: 'ink', width: WIDTH.heavy }),
      pen.line([outerFrom, outerTo], { stroke: 'ink', width: WIDTH.medium }),
      ...jambs.map((jamb) => pen.line(jamb, { stroke: 'ink', width: WIDTH.heavy })),
    ];
  });
}

/** The parts of a wall that no opening takes, as distances from its start. */
function solidStretches(wall: Wall, openings: readonly PlacedOpening[]): [number, number][] {
  const sorted = openings.map(({ opening }) => [opening.from, opening.from + opening.width] as const).sort((a, b) => a[0] - b[0]);
  const stretches: [number, number][] = [];
  let from = 0;
  for (const [near, far] of sorted) {
    if (near > from) stretches.push([from, Math.min(near, wall.length)]);
    from = Math.max(from, far);
  }
  if (from < wall.length) stretches.push([from, wall.length]);
  return stretches;
}
