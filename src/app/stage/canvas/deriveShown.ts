import {
  type Drawing,
  drawDimensions,
  drawFindings,
  drawFindingsInMotion,
  drawMarks,
  drawPlan,
  drawThings,
  type PlanOptions,
  type Prim,
} from '../../../drawing';
import { drawChoice, type Handle, handlesShown, type ItemShape, shapesOf, shownPlan, type View, type Viewport } from '../../../editor';
import type { Plan } from '../../../plan';
import { type Palette, palettes } from '../../../render';
import { deriveScene, type Scene } from '../../../scene';
import { rememberLast } from '../../parts/rememberLast';
import type { AppState } from '../../store/store';
import { deriveMotionWork, deriveWork, type MotionWork, type Work } from '../../store/work';
import { deriveDenominator } from '../screenScale';
import { type DrawnItem, groupNotes, groupThings, isSameDrawing } from './drawnItem';

/** All that the canvas shows, as groups and display lists, back to front. */
export interface Shown extends ShownPlan {
  readonly view: View;
  /** Size of the canvas, px. */
  readonly viewport: Viewport;
  readonly palette: Palette;
  /** Where a press takes what is shown. */
  readonly shapes: ReadonlyMap<string, ItemShape>;
  /** What is chosen and what lies under the pointer, guides and live dimensions. */
  readonly choice: Drawing;
  readonly handles: readonly Handle[];
  /** Id of the handle that arrows and delete act on. */
  readonly chosenHandle: string | null;
}

/** The plan on the canvas. While something is dragged, what stands still need not be painted again. */
export interface ShownPlan {
  readonly room: readonly DrawnItem[];
  readonly items: readonly DrawnItem[];
  /** Keys of the items that move with the hand. */
  readonly moving: ReadonlySet<string>;
  readonly notes: readonly DrawnItem[];
  readonly dimensions: Drawing;
  readonly findings: Drawing;
  /** Marks and findings while something is dragged; they go with what moves. */
  readonly motion: Drawing;
}

export function deriveShown({ editor, finding, theme }: AppState): Shown {
  const { present } = editor.history;
  const plan = shownPlan(editor);
  const scene = deriveScene(plan);
  const scaleDenominator = deriveDenominator(editor.view.scale);
  const shown =
    plan === present
      ? composePlan(deriveWork(plan), scaleDenominator, finding)
      : composeMotion(deriveWork(present), plan, scaleDenominator, finding);
  return {
    ...shown,
    view: editor.view,
    viewport: editor.viewport,
    palette: palettes[theme],
    shapes: shapesOf(scene),
    choice: composeChoice(editor, scene),
    handles: handlesShown(editor, scene),
    chosenHandle: editor.handle,
  };
}

const composeChoice = rememberLast(drawChoice);

const NONE: ReadonlySet<string> = new Set();

const composePlan = rememberLast((work: Work, scaleDenominator: number, chosen: string | null): ShownPlan => {
  const { scene } = work;
  const options = optionsOf(work, scaleDenominator);
  return {
    ...groupThings(scene),
    moving: NONE,
    notes: groupNotes(scene, drawNotes(scene, options.units, scaleDenominator)),
    dimensions: drawDimensions(scene, options),
    findings: drawFindings(scene, work.findings, options, chosen),
    motion: [],
  };
});

const composeMotion = rememberLast((before: Work, plan: Plan, scaleDenominator: number, chosen: string | null): ShownPlan => {
  const now = deriveMotionWork(before, plan);
  return divideMotion(before.scene, now, optionsOf(now, scaleDenominator), chosen);
});

const optionsOf = ({ scene }: Work, scaleDenominator: number): PlanOptions => ({ units: scene.plan.settings.units, scaleDenominator });

/**
 * The plan while something is dragged. Figures that a move can change are left out, since laying them out anew would hold up
 * the hand; the gesture shows its own. Where the room itself changes, every note and dimension may.
 */
export function divideMotion(
  before: Scene,
  { scene: now, findings, numbers }: MotionWork,
  options: PlanOptions,
  chosen: string | null,
): ShownPlan {
  const things = groupThings(now);
  const moving = findMoving(groupThings(before).items, things.items);
  const isRoomNew = before.room !== now.room;
  const moved = subjectsOf(isRoomNew ? [...things.room, ...things.items] : things.items.filter(({ key }) => moving.has(key)));
  const { units, scaleDenominator } = options;
  return {
    ...things,
    moving,
    ...(isRoomNew ? NO_WORDS : drawStillWords(before, units, scaleDenominator, [...moved].join(' '))),
    findings: [],
    motion: [...drawMarks(now, options, moved), ...drawFindingsInMotion(findings, numbers, options, chosen)],
  };
}

const NO_WORDS = { notes: [], dimensions: [] };

/** Notes, and dimensions of the room, that are not of what moves (its ids, apart by blanks). */
const drawStillWords = rememberLast((before: Scene, units: PlanOptions['units'], scaleDenominator: number, moved: string) => {
  const ids = new Set(moved.split(' '));
  const isStill = ({ subject }: Prim) => subject === undefined || !ids.has(subject);
  return {
    notes: groupNotes(before, drawNotes(before, units, scaleDenominator).filter(isStill)),
    dimensions: drawRoomDimensions(before, units, scaleDenominator).filter(isStill),
  };
});

/** Keys of the groups that are not as they were. */
function findMoving(before: readonly DrawnItem[], now: readonly DrawnItem[]): ReadonlySet<string> {
  const known = new Map(before.map((item) => [item.key, item]));
  const isMoving = (item: DrawnItem) => {
    const old = known.get(item.key);
    return old === undefined || !isSameDrawing(old.prims, item.prims);
  };
  return new Set(now.filter(isMoving).map(({ key }) => key));
}

function subjectsOf(items: readonly DrawnItem[]): Set<string> {
  const subjects = new Set<string>();
  for (const { prims } of items) for (const { subject } of prims) if (subject !== undefined) subjects.add(subject);
  return subjects;
}

/** Marks and notes of a plan. */
const drawNotes = rememberLast((scene: Scene, units: PlanOptions['units'], scaleDenominator: number): Drawing => {
  const things = new Set(drawThings(scene));
  return drawPlan(scene, { units, scaleDenominator }).filter((prim) => !things.has(prim));
});

/** The dimensions that no thing in the room can change. */
const drawRoomDimensions = rememberLast((scene: Scene, units: PlanOptions['units'], scaleDenominator: number): Drawing => {
  const { walls, openings } = scene.room;
  const ofRoom = new Set<string | undefined>([...walls.map(({ id }) => id), ...openings.map(({ opening }) => opening.id)]);
  return drawDimensions(scene, { units, scaleDenominator }).filter(({ subject }) => ofRoom.has(subject));
});
