import { directionTo, distance, type Point, sub } from '../../geometry';
import { type Corner, moveCorner, type Plan, removeCorner } from '../../plan';
import { raysFrom, type SnapLine, snapPoint } from '../snap/snapPoint';
import type { Readout } from '../types';
import type { Pull, Solution } from './solution';

/** A corner dropped this near to its neighbour becomes one with it, mm; farther where a finger can't tell. */
const MERGE_WITHIN = 30;

/** Drags a corner of the room. It catches where its walls stand square to the walls beyond them; dropped on a neighbour it goes. */
export function solveCornerMove({ scene, from, to, aim }: Pull, id: string): Solution {
  const { outline } = scene.plan.room;
  const index = outline.findIndex((corner) => corner.id === id);
  const corner = outline[index];
  if (corner === undefined) return { label: 'Move corner', recipe: () => {} };
  const shift = sub(to, from);
  const wanted = { x: corner.x + shift.x, y: corner.y + shift.y };
  const [before, after] = [neighbour(outline, index, -1), neighbour(outline, index, 1)];
  const reach = Math.max(aim.reach, MERGE_WITHIN);
  if (!aim.isFree && outline.length > 3 && [before, after].some((other) => distance(other, wanted) <= reach)) return merge(scene.plan, id);
  const snapped = aim.isFree
    ? { point: wanted, guides: [] }
    : snapPoint(wanted, { points: [], lines: linesFor(scene.plan, index) }, aim.reach, aim.step);
  return {
    label: 'Move corner',
    recipe: moveCorner(id, snapped.point),
    guides: snapped.guides,
    readouts: [before, after].map((other) => wallReadout(other, snapped.point)),
  };
}

function merge({ room }: Plan, id: string): Solution {
  const corner = room.outline.find((item) => item.id === id) as Corner;
  return { label: 'Take out corner', recipe: removeCorner(id), guides: [{ kind: 'joint', from: corner, to: corner }], readouts: [] };
}

/** Through each neighbour: square to and in line with the wall beyond it, and upright and level on the paper. */
function linesFor({ room: { outline } }: Plan, index: number): SnapLine[] {
  return [-1, 1].flatMap((side) => {
    const near = neighbour(outline, index, side);
    const far = neighbour(outline, index, side * 2);
    return [...raysFrom(near, directionTo(far, near)), ...raysFrom(near, { x: 1, y: 0 }, 'aligned')];
  });
}

function neighbour(outline: readonly Corner[], index: number, by: number): Corner {
  return outline[(index + by + outline.length * 2) % outline.length] as Corner;
}

const wallReadout = (from: Point, to: Point): Readout => ({ kind: 'length', from, to, value: distance(from, to) });
