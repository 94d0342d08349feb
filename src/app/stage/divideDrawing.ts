import {
  type Drawing,
  drawDimensions,
  drawFindingsInMotion,
  drawMarks,
  drawPlan,
  drawThings,
  type PlanOptions,
  type Prim,
} from '../../drawing';
import { isSameList } from '../../geometry';
import type { Scene } from '../../scene';
import { rememberLast } from '../parts/rememberLast';
import type { MotionWork } from '../store/work';

/**
 * A drawing while something is dragged, in two parts: what stands still and need not be painted again, and what moves.
 * Figures that a move can change are left out, since laying them out anew would hold up the hand; the gesture shows its own.
 */
export function divideDrawing(
  before: Scene,
  { scene: now, findings, numbers }: MotionWork,
  options: PlanOptions,
  chosen: string | null,
): { still: Drawing; moving: Drawing } {
  const things = drawThings(now);
  const over = drawFindingsInMotion(findings, numbers, options, chosen);
  // The floor lies under everything: where it changes, nothing can be left standing on it.
  const known = before.room === now.room ? knownOf(before) : NONE;
  const moving = things.filter((prim) => !known.has(prim));
  const moved = new Set(moving.flatMap(({ subject }) => subject ?? []));
  const words = known === NONE ? [] : drawWords(before, options.units, options.scaleDenominator);
  const isStill = ({ subject }: Prim) => subject === undefined || !moved.has(subject);
  return {
    still: keep([...things.filter((prim) => known.has(prim)), ...words.filter(isStill)]),
    moving: [...moving, ...drawMarks(now, options, moved), ...over],
  };
}

const NONE: ReadonlySet<Prim> = new Set();

const knownOf = rememberLast((scene: Scene): ReadonlySet<Prim> => new Set(drawThings(scene)));

/** The same list while the same things stand still: it is then not painted again. */
function keep(prims: Prim[]): Prim[] {
  if (!isSameList(prims, kept)) kept = prims;
  return kept;
}

let kept: Prim[] = [];

/** Marks and notes of the plan as it was, and the dimensions of its room. */
const drawWords = rememberLast((scene: Scene, units: PlanOptions['units'], scaleDenominator: number): Prim[] => {
  const options = { units, scaleDenominator };
  const things = knownOf(scene);
  const { walls, openings } = scene.room;
  const ofRoom = new Set<string | undefined>([...walls.map(({ id }) => id), ...openings.map(({ opening }) => opening.id)]);
  return [
    ...drawPlan(scene, options).filter((prim) => !things.has(prim)),
    ...drawDimensions(scene, options).filter(({ subject }) => ofRoom.has(subject)),
  ];
});
