import type { Point } from '../../geometry';
import {
  addColumn,
  addFloorDrain,
  addStub,
  addThing,
  createId,
  type Plan,
  type Recipe,
  UNKNOWN_FLOOR_WASTE,
  UNKNOWN_THING,
} from '../../plan';
import { deriveScene, type Scene } from '../../scene';
import { optionWords } from '../../text';
import { type Aim, aimOf } from '../gestures/aim';
import { targetsBeside } from '../gestures/moveThings';
import { distancesAround } from '../snap/around';
import { type Box, createBox, moveBox } from '../snap/box';
import { snapBoxes } from '../snap/snapBoxes';
import type { EditorState, KeyInput, PointerInput } from '../types';
import { facingFrom } from './facing';
import { type Ghost, keepGhost, showGhost } from './ghost';
import { BACKS_TO_WALL, COLUMN_SIZE, DRAIN_SIZES, STUB_HEIGHTS, THING_SIZES } from './thingSizes';
import type { Step, Tool } from './tool';
import type { AddThingState, ThingToAdd } from './toolState';

/** Puts a thing, a column, a drain or a stub into the room where one presses. */
export const addThingTool: Tool<AddThingState> = {
  id: 'add-thing',
  name: 'Put a thing into the room',
  start: (choice) => ({
    tool: 'add-thing',
    name: 'idle',
    turns: 0,
    add: choice.tool === 'add-thing' ? choice.add : { kind: 'thing', thing: 'other' },
  }),
  hint: ({ add }) => `Press where the ${wordFor(add)} goes. R turns it; shift keeps the tool for another.`,
  cursor: () => 'crosshair',
  transitions: {
    idle: { move: show, down: show, up: keep, key: turnIt },
    showing: { move: show, down: show, up: keep, key: turnIt, cancel: (state) => ({ tool: { ...state, name: 'idle' }, preview: null }) },
  },
};

function show(state: AddThingState, event: PointerInput, editor: EditorState): Step {
  return { tool: { ...state, name: 'showing' }, preview: showGhost(editor, ghostOf(state, event, editor)) };
}

function keep(state: AddThingState, event: PointerInput, editor: EditorState): Step {
  return keepGhost(editor, ghostOf(state, event, editor), { ...state, name: 'idle' }, event);
}

function turnIt(state: AddThingState, event: KeyInput): Step | null {
  if (event.key.toLowerCase() !== 'r' || event.ctrl) return null;
  return { tool: { ...state, turns: (state.turns + (event.shift ? 3 : 1)) % 4 } };
}

const wordFor = (add: ThingToAdd): string => optionWords(kindWord(add));

function kindWord(add: ThingToAdd): string {
  if (add.kind === 'thing') return add.thing === 'other' ? 'thing' : add.thing;
  if (add.kind === 'stub') return add.stub;
  return add.kind === 'floor-drain' ? add.drain : 'column';
}

/** The thing as it would stand with the pointer here. */
function ghostOf({ add, turns }: AddThingState, event: PointerInput, editor: EditorState): Ghost {
  const plan = editor.history.present;
  const scene = deriveScene(plan);
  const aim = aimOf(event, editor);
  const id = createId(plan, kindWord(add));
  const box = boxFor(add, id, turns, event.point, scene, aim);
  const targets = targetsBeside(scene, []);
  const snapped = aim.isFree ? { by: { x: 0, y: 0 }, guides: [] } : snapBoxes([box.box], targets, aim);
  const placed = moveBox(box.box, snapped.by);
  return {
    label: `Add ${wordFor(add)}`,
    recipe: recipeFor(add, id, placed.centre, box.rotationDeg, plan),
    ids: [id],
    guides: snapped.guides,
    readouts: distancesAround(placed, targets),
  };
}

function boxFor(add: ThingToAdd, id: string, turns: number, at: Point, scene: Scene, aim: Aim): { box: Box; rotationDeg: number } {
  if (add.kind === 'stub') return { box: createBox(id, at, 0, 0, 0), rotationDeg: 0 };
  const { width, depth } = sizeFor(add);
  const seeksWall = add.kind === 'thing' && BACKS_TO_WALL.includes(add.thing) && !aim.isFree;
  const rotationDeg = ((seeksWall ? facingFrom(scene, at, depth) : 0) + turns * 90) % 360;
  return { box: createBox(id, at, rotationDeg, width, depth), rotationDeg };
}

function sizeFor(add: Exclude<ThingToAdd, { kind: 'stub' }>): { width: number; depth: number } {
  if (add.kind === 'thing') return THING_SIZES[add.thing];
  const side = add.kind === 'column' ? COLUMN_SIZE : DRAIN_SIZES[add.drain];
  return { width: side, depth: side };
}

function recipeFor(add: ThingToAdd, id: string, { x, y }: Point, rotationDeg: number, plan: Plan): Recipe {
  switch (add.kind) {
    case 'thing':
      return addThing({ id, kind: add.thing, name: '', x, y, rotationDeg, ...THING_SIZES[add.thing], ...UNKNOWN_THING });
    case 'column':
      return addColumn({ id, x, y, width: COLUMN_SIZE, depth: COLUMN_SIZE, rotationDeg });
    case 'floor-drain':
      return addFloorDrain({ id, kind: add.drain, x, y, size: DRAIN_SIZES[add.drain], waste: UNKNOWN_FLOOR_WASTE });
    case 'stub':
      return addStub({ id, kind: add.stub, x, y, z: Math.min(STUB_HEIGHTS[add.stub], plan.room.ceilingHeight ?? Infinity) });
  }
}
