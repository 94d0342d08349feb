import { type DataSheet, FAMILIES } from '../../catalog';
import { add, type Point } from '../../geometry';
import { addMachine, createId, edit, findDataSheet, type Plan, type Recipe, UNKNOWN_HOOK_UP } from '../../plan';
import { deriveScene } from '../../scene';
import { aimOf } from '../gestures/aim';
import { targetsBeside } from '../gestures/moveThings';
import { lineRecipe } from '../line/addLine';
import { distancesAround } from '../snap/around';
import { type Box, boxesOf, moveBox } from '../snap/box';
import { snapBoxes } from '../snap/snapBoxes';
import type { EditorState, KeyInput, PointerInput } from '../types';
import { facingFrom } from './facing';
import { type Ghost, keepGhost, showGhost } from './ghost';
import type { Step, Tool } from './tool';
import type { PlaceMachineState } from './toolState';

/** Puts a machine, or a machine with its whole line, where one presses. */
export const placeMachineTool: Tool<PlaceMachineState> = {
  id: 'place-machine',
  name: 'Put a machine into the room',
  start: (choice) => {
    const chosen = choice.tool === 'place-machine' ? choice : { sheet: FAMILIES[0]?.id ?? '', line: null };
    return { tool: 'place-machine', name: 'idle', sheet: chosen.sheet, line: chosen.line ?? null, turns: 0 };
  },
  hint: ({ line }) => `Press where the ${line === null ? 'machine' : 'machine of the line'} goes. R turns it.`,
  cursor: () => 'crosshair',
  transitions: {
    idle: { move: show, down: show, up: keep, key: turnIt },
    showing: { move: show, down: show, up: keep, key: turnIt, cancel: (state) => ({ tool: { ...state, name: 'idle' }, preview: null }) },
  },
};

function show(state: PlaceMachineState, event: PointerInput, editor: EditorState): Step {
  return { tool: { ...state, name: 'showing' }, preview: showGhost(editor, ghostOf(state, event, editor)) };
}

function keep(state: PlaceMachineState, event: PointerInput, editor: EditorState): Step {
  return keepGhost(editor, ghostOf(state, event, editor), { ...state, name: 'idle' }, event);
}

function turnIt(state: PlaceMachineState, event: KeyInput): Step | null {
  if (event.key.toLowerCase() !== 'r' || event.ctrl) return null;
  return { tool: { ...state, turns: (state.turns + (event.shift ? 3 : 1)) % 4 } };
}

function ghostOf(state: PlaceMachineState, event: PointerInput, editor: EditorState): Ghost | null {
  const plan = editor.history.present;
  const scene = deriveScene(plan);
  const sheet = findDataSheet(plan, state.sheet);
  if (sheet === undefined) return null;
  const aim = aimOf(event, editor);
  const rotationDeg = ((aim.isFree ? 0 : facingFrom(scene, event.point, sheet.depth)) + state.turns * 90) % 360;
  const id = createId(plan, 'machine');
  const recipeAt = (at: Point): Recipe =>
    state.line === null ? aloneRecipe(id, sheet, at, rotationDeg) : lineRecipe({ ...state.line, sheet, at, rotationDeg });
  const moving = boxesOfLine(edit(plan, '', recipeAt(event.point)).plan, id);
  const targets = targetsBeside(scene, []);
  const { by, guides } = aim.isFree ? NO_SNAP : snapBoxes(moving, targets, aim);
  const placed = moving.map((box) => moveBox(box, by));
  return {
    label: state.line === null ? 'Add machine' : 'Add line',
    recipe: recipeAt(add(event.point, by)),
    ids: [id],
    guides,
    readouts: placed[0] === undefined ? [] : distancesAround(placed[0], targets, placed),
  };
}

const NO_SNAP = { by: { x: 0, y: 0 }, guides: [] };

function aloneRecipe(id: string, { id: sheet, controls }: DataSheet, { x, y }: Point, rotationDeg: number): Recipe {
  return addMachine({ id, sheet, x, y, rotationDeg, controls: controls[0]?.id ?? '', electrical: null, hookUp: UNKNOWN_HOOK_UP });
}

/** The machine, then the tables joined to it. */
function boxesOfLine(plan: Plan, machine: string): Box[] {
  const tables = plan.tables.flatMap(({ id, place }) => (place.kind === 'joined' && place.machine === machine ? [id] : []));
  return boxesOf(plan).filter(({ id }) => id === machine || tables.includes(id));
}
