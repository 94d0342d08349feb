import { along, distance, dot, nearestOnSegment, type Point, sub } from '../../geometry';
import type { Opening, Plan } from '../../plan';
import type { Scene, Wall } from '../../scene';
import { nounOf } from '../lists/names';
import { roundTo } from '../snap/step';
import type { Guide, Readout } from '../types';
import type { Aim } from './aim';
import type { Pull, Solution } from './solution';

/** An opening leaves its wall for a nearer one when the pointer is farther than this from its own, mm. */
const LEAVE_BEYOND = 400;

/** Slides an opening along its wall, or over to another. */
export function solveOpeningMove({ scene, from, to, aim }: Pull, opening: Opening): Solution {
  const own = scene.room.walls.find(({ id }) => id === opening.wall);
  const wall = wallFor(scene, own, to);
  if (own === undefined || wall === undefined) return { label: 'Move opening', recipe: () => {} };
  const grab = wall === own ? dot(sub(from, own.a), own.direction) - opening.from : opening.width / 2;
  const placed = placeOnWall(scene.plan, wall, opening, dot(sub(to, wall.a), wall.direction) - grab, aim);
  return {
    label: `Move ${nounOf(scene.plan, opening.id)}`,
    recipe: editOpening(opening.id, { wall: wall.id, from: placed.from }),
    guides: placed.guides,
    readouts: readoutsOn(wall, placed.from, opening.width),
  };
}

/** Drags one edge of an opening; the other stays. */
export function solveOpeningEdge({ scene, from, to, aim }: Pull, opening: Opening, edge: 'from' | 'to'): Solution {
  const wall = scene.room.walls.find(({ id }) => id === opening.wall);
  if (wall === undefined) return { label: 'Move opening', recipe: () => {} };
  const by = dot(sub(to, from), wall.direction);
  const far = opening.from + opening.width;
  const span =
    edge === 'from'
      ? startSpan(opening, by, aim)
      : { from: opening.from, width: widthOf(opening.width + by, wall.length - opening.from, aim) };
  const width = edge === 'from' ? far - span.from : span.width;
  return {
    label: `Change width of ${nounOf(scene.plan, opening.id)}`,
    recipe: editOpening(opening.id, { from: span.from, width }),
    readouts: readoutsOn(wall, span.from, width),
  };
}

/** Least width that can be dragged, mm. */
const LEAST_WIDTH = 50;

const widthOf = (width: number, most: number, { step }: Aim) => Math.min(Math.max(roundTo(width, step), LEAST_WIDTH), most);

function startSpan(opening: Opening, by: number, aim: Aim): { from: number; width: number } {
  const far = opening.from + opening.width;
  const width = widthOf(opening.width - by, far, aim);
  return { from: far - width, width };
}

/** The wall nearest to a place; an opening keeps its own until the pointer is well away from it. */
function wallFor(scene: Scene, own: Wall | undefined, to: Point): Wall | undefined {
  if (own !== undefined && awayFrom(own, to) <= LEAVE_BEYOND) return own;
  return nearestWall(scene.room.walls, to);
}

const awayFrom = (wall: Wall, point: Point) => distance(point, nearestOnSegment(point, wall).point);

/** The wall nearest to a place. */
export function nearestWall(walls: readonly Wall[], point: Point): Wall | undefined {
  return walls.reduce<Wall | undefined>(
    (best, wall) => (best === undefined || awayFrom(wall, point) < awayFrom(best, point) ? wall : best),
    undefined,
  );
}

/** Where an opening of this width comes to lie on a wall: at an end, in the middle, beside its neighbour, or by steps. */
export function placeOnWall(
  plan: Plan,
  wall: Wall,
  opening: Pick<Opening, 'width'> & { id?: string },
  wanted: number,
  aim: Aim,
): { from: number; guides: Guide[] } {
  const last = wall.length - opening.width;
  const inside = (from: number) => Math.max(0, Math.min(from, last));
  if (aim.isFree) return { from: inside(wanted), guides: [] };
  const others = plan.room.openings.filter((other) => other.wall === wall.id && other.id !== opening.id);
  const spots: [number, Guide['kind']][] = [
    [0, 'flush'],
    [last, 'flush'],
    [last / 2, 'centred'],
    ...others.flatMap((other): [number, Guide['kind']][] => [
      [other.from + other.width, 'flush'],
      [other.from - opening.width, 'flush'],
    ]),
  ];
  const near = spots.filter(([from]) => from >= 0 && from <= last && Math.abs(from - wanted) <= aim.reach);
  const best = near.sort(([a], [b]) => Math.abs(a - wanted) - Math.abs(b - wanted))[0];
  if (best === undefined) return { from: inside(roundTo(inside(wanted), aim.step)), guides: [] };
  const [from, kind] = best;
  return { from, guides: [{ kind, from: along(wall.a, wall.direction, from), to: along(wall.a, wall.direction, from + opening.width) }] };
}

/** From the start of the wall, its own width, to the end of the wall. */
export function readoutsOn(wall: Wall, from: number, width: number): Readout[] {
  const at = (s: number) => along(wall.a, wall.direction, s);
  const row = (kind: Readout['kind'], a: number, b: number): Readout[] =>
    b - a > 0.5 ? [{ kind, from: at(a), to: at(b), value: b - a }] : [];
  return [...row('distance', 0, from), ...row('length', from, from + width), ...row('distance', from + width, wall.length)];
}

function editOpening(id: string, change: Partial<Opening>) {
  return (draft: Plan) => {
    const item = draft.room.openings.find((opening) => opening.id === id);
    if (item !== undefined) Object.assign(item, change);
  };
}
