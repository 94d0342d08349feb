import { along, dot, type Point, rightOf, scale, sub } from '../../geometry';
import type { Plan } from '../../plan';
import { nounOf } from '../lists/names';
import { type Box, boxesOf } from '../snap/box';
import { snapBoxes } from '../snap/snapBoxes';
import { roundTo } from '../snap/step';
import type { Guide, Readout } from '../types';
import { targetsBeside } from './moveThings';
import type { Pull, Solution } from './solution';

/** Sides of a rectangle that can be dragged, by their handle's word: along its x (−1 left, 1 right) and its y (−1 back, 1 front). */
export const EDGES: Readonly<Record<string, readonly [along: -1 | 0 | 1, across: -1 | 0 | 1]>> = {
  left: [-1, 0],
  right: [1, 0],
  back: [0, -1],
  front: [0, 1],
  'left-back': [-1, -1],
  'right-back': [1, -1],
  'right-front': [1, 1],
  'left-front': [-1, 1],
};

/** Least sizes that can be dragged, mm: as the plan has them. */
const LEAST = { hood: 100, other: 10 };

/** Drags an edge or a corner of something rectangular; the opposite edge or corner stays. */
export function solveResize(pull: Pull, id: string, handle: string): Solution {
  const { scene } = pull;
  const box = boxesOf(scene.plan).find((item) => item.id === id);
  const [su, sv] = EDGES[handle] ?? [0, 0];
  const label = `Change size of ${nounOf(scene.plan, id)}`;
  if (box === undefined) return { label, recipe: () => {} };
  const least = scene.plan.hoods.some((hood) => hood.id === id) ? LEAST.hood : LEAST.other;
  const u = pullEdge(pull, box, box.u, box.hu, su, least);
  const v = pullEdge(pull, box, rightOf(box.u), box.hv, sv, least);
  const centre = along(along(box.centre, box.u, u.shift), rightOf(box.u), v.shift);
  const size = { x: centre.x, y: centre.y, width: u.size, depth: v.size };
  return {
    label,
    recipe: (draft) => void Object.assign(rectangles(draft).find((item) => item.id === id) ?? {}, size),
    guides: [...u.guides, ...v.guides],
    readouts: sizeReadouts({ ...box, centre, hu: u.size / 2, hv: v.size / 2 }, su, sv),
  };
}

interface Pulled {
  size: number;
  /** How far the centre moves along the axis. */
  shift: number;
  guides: readonly Guide[];
}

/** One axis: the dragged edge catches or keeps the size to the step. */
function pullEdge({ scene, from, to, aim }: Pull, box: Box, n: Point, half: number, sign: -1 | 0 | 1, least: number): Pulled {
  if (sign === 0) return { size: half * 2, shift: 0, guides: [] };
  const wanted = 2 * half + sign * dot(sub(to, from), n);
  const across = n === box.u ? box.hv : box.hu;
  const edge: Box = { id: box.id, centre: along(box.centre, n, sign * (wanted - half)), u: n, hu: 0, hv: across };
  const snapped = aim.isFree ? null : snapBoxes([edge], targetsBeside(scene, [box.id]), { reach: aim.reach, step: 0, axes: 'u' });
  const isCaught = snapped !== null && snapped.guides.length > 0;
  const size = isCaught ? wanted + sign * dot(snapped.by, n) : roundTo(wanted, aim.step);
  const held = Math.max(size, least);
  return { size: held, shift: sign * (held / 2 - half), guides: isCaught && held === size ? snapped.guides : [] };
}

function rectangles(draft: Plan): { id: string }[] {
  return [...draft.things, ...draft.hoods, ...draft.room.columns];
}

/** The size along each axis that is being dragged, written on the edge beside it. */
function sizeReadouts({ centre, u, hu, hv }: Box, su: number, sv: number): Readout[] {
  const v = rightOf(u);
  const row = (n: Point, half: number, aside: Point): Readout => {
    const middle = along(centre, aside, 1);
    return { kind: 'length', from: along(middle, n, -half), to: along(middle, n, half), value: half * 2 };
  };
  return [...(su === 0 ? [] : [row(u, hu, scale(v, hv))]), ...(sv === 0 ? [] : [row(v, hv, scale(u, hu))])];
}
