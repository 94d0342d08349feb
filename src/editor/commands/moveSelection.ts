import { add, type Point } from '../../geometry';
import { type Plan, type Recipe, tryEdit } from '../../plan';
import { deriveScene } from '../../scene';
import { FREE_AIM } from '../gestures/aim';
import type { Gesture } from '../gestures/gesture';
import { pivotOf } from '../gestures/rotate';
import { solveGesture } from '../gestures/solveGesture';
import { handlesFor } from '../hit/handlesFor';
import { nameSubject, nounOf } from '../lists/names';
import { rotateThings } from '../moves/moveThings';
import { boxesOf, middleOf } from '../snap/box';
import { findSubject } from '../subject/subject';
import { problemText } from '../tools/commitPreview';
import type { EditorState } from '../types';
import { commit } from './history';
import { refuse } from './select';

/** Moves what is chosen (or its chosen handle) by so much, mm, past every snap. */
export function nudgeSelection(state: EditorState, by: Point): EditorState {
  const { history, selection, handle } = state;
  const [id] = selection;
  if (id === undefined) return state;
  const plan = history.present;
  if (handle === null && selection.every((each) => isJoined(plan, each))) return refuse(state, joinedText(plan, id));
  const gesture = handle === null ? bodyGesture(plan, selection, by) : handleGesture(state, id, handle, by);
  const solution = gesture && solveGesture(gesture, FREE_AIM);
  return solution ? change(state, solution.label, solution.recipe) : state;
}

function bodyGesture(plan: Plan, selection: readonly string[], by: Point): Gesture {
  const ids = selection.filter((id) => !isJoined(plan, id));
  const from = startFor(plan, ids[0] ?? '');
  return { kind: 'move', start: plan, ids, from, to: add(from, by), held: null };
}

/** Things along a wall or a table are pulled from where they are; for all others any place does. */
function startFor(plan: Plan, id: string): Point {
  const scene = deriveScene(plan);
  const opening = scene.room.openings.find((item) => item.opening.id === id);
  const fitting = scene.tables.flatMap((table) => table.fittings).find((item) => item.fitting.id === id);
  return opening?.centre ?? fitting?.centre ?? { x: 0, y: 0 };
}

function handleGesture({ history, view }: EditorState, id: string, handle: string, by: Point): Gesture | null {
  const plan = history.present;
  const grip = handlesFor(deriveScene(plan), id, view.scale).find((item) => item.id === handle);
  return grip === undefined ? null : { kind: 'handle', start: plan, id, handle, from: grip.point, to: add(grip.point, by), held: null };
}

/** Turns what is chosen clockwise: one thing about its own centre, several about their common middle. */
export function rotateSelection(state: EditorState, deg: number): EditorState {
  const { history, selection } = state;
  const plan = history.present;
  const ids = selection.filter((id) => pivotOf(plan, id) !== null);
  const [id] = ids;
  const [first] = selection;
  if (first === undefined) return state;
  if (id === undefined)
    return refuse(state, isJoined(plan, first) ? joinedText(plan, first) : `${nameSubject(plan, first)} can’t be turned.`);
  const boxes = boxesOf(plan).filter((box) => ids.includes(box.id));
  const centre = ids.length === 1 ? pivotOf(plan, id)?.centre : middleOf(boxes);
  const label = ids.length === 1 ? `Turn ${nounOf(plan, id)}` : `Turn ${ids.length} things`;
  return centre === undefined ? state : change(state, label, rotateThings(deriveScene(plan), ids, deg, centre));
}

/** Whether a thing is a table held by a machine's door, which moves with the machine only. */
export function isJoined(plan: Plan, id: string): boolean {
  return findSubject(plan, id)?.kind === 'table' && plan.tables.some((table) => table.id === id && table.place.kind === 'joined');
}

const joinedText = (plan: Plan, id: string) =>
  `${nameSubject(plan, id)} is joined to its machine: move or turn the machine, drag the table off, or set it free on its card.`;

/** Commits a change that leaves a sound plan; says why it can't otherwise. */
export function change(state: EditorState, label: string, recipe: Recipe): EditorState {
  const result = tryEdit(state.history.present, label, recipe);
  return result.ok ? commit(state, result.transaction) : refuse(state, problemText(result.problem));
}
