import { containsPoint, type Point } from '../../geometry';
import { addHood, createId, type Hood } from '../../plan';
import { deriveScene, type PlacedMachine, type Scene } from '../../scene';
import { fitHood, LIP_ABOVE_DECK, leastOverhang } from '../../topics/hood';
import { aimOf } from '../gestures/aim';
import { roundTo } from '../snap/step';
import type { EditorState, PointerInput, Readout } from '../types';
import { commitPreview } from './commitPreview';
import { CHOOSE, type Ghost, keepGhost, showGhost } from './ghost';
import { isDrag, pressAt } from './press';
import type { Step, Tool } from './tool';
import type { AddHoodState } from './toolState';

type In<N extends AddHoodState['name']> = Extract<AddHoodState, { name: N }>;

const idle: AddHoodState = { tool: 'add-hood', name: 'idle' };

/** Usual body of a canopy, and a hood that hangs over nothing, mm. */
const BODY = 610;
const LIP = 1981;
const ALONE = 1219;

/** Hangs a hood: over a machine it takes the least size that captures; a drag gives it any. */
export const addHoodTool: Tool<AddHoodState> = {
  id: 'add-hood',
  name: 'Hang a hood',
  start: () => idle,
  hint: () => 'Press a machine to hang a hood over it, or drag one out.',
  cursor: () => 'crosshair',
  transitions: {
    idle: { move: show, down: (_state, event) => ({ tool: { tool: 'add-hood', name: 'pressed', press: pressAt(event) } }) },
    showing: {
      move: show,
      down: (_state, event) => ({ tool: { tool: 'add-hood', name: 'pressed', press: pressAt(event) } }),
      cancel: () => ({ tool: idle, preview: null }),
    },
    pressed: { move: beginDrag, up: keep, cancel: () => ({ tool: idle, preview: null }) },
    stretching: { move: stretch, up: finish, cancel: () => ({ tool: idle, preview: null }) },
  },
};

function show(_state: AddHoodState, event: PointerInput, editor: EditorState): Step {
  return { tool: { tool: 'add-hood', name: 'showing' }, preview: showGhost(editor, ghostAt(event, editor)) };
}

function keep(_state: AddHoodState, event: PointerInput, editor: EditorState): Step {
  return keepGhost(editor, ghostAt(event, editor), idle, event);
}

function beginDrag(state: In<'pressed'>, event: PointerInput, editor: EditorState): Step | null {
  if (!isDrag(state.press, event)) return null;
  return stretch({ tool: 'add-hood', name: 'stretching', from: state.press.point }, event, editor);
}

function stretch(state: In<'stretching'>, event: PointerInput, editor: EditorState): Step {
  return { tool: state, preview: showGhost(editor, draggedGhost(state.from, event, editor)) };
}

function finish(state: In<'stretching'>, event: PointerInput, editor: EditorState): Step {
  const ghost = draggedGhost(state.from, event, editor);
  return commitPreview({ ...editor, preview: showGhost(editor, ghost) }, CHOOSE, { selection: ghost.ids });
}

/** Over the machine below the pointer, else a hood of a usual size about it. */
function ghostAt({ point }: PointerInput, editor: EditorState): Ghost {
  const scene = deriveScene(editor.history.present);
  const machine = scene.machines.find(({ footprint }) => containsPoint(footprint, point));
  const alone = { x: point.x, y: point.y, rotationDeg: 0, width: ALONE, depth: ALONE };
  return ghostOf(scene, machine === undefined ? alone : fitHood(machine, leastOverhang(machine)), machine ?? null);
}

function draggedGhost(from: Point, event: PointerInput, editor: EditorState): Ghost {
  const { step } = aimOf(event, editor);
  const [w, d] = [event.point.x - from.x, event.point.y - from.y].map((size) => roundTo(size, step)) as [number, number];
  const place = {
    x: from.x + w / 2,
    y: from.y + d / 2,
    rotationDeg: 0,
    width: Math.max(Math.abs(w), 100),
    depth: Math.max(Math.abs(d), 100),
  };
  const scene = deriveScene(editor.history.present);
  const under = scene.machines.find(
    ({ machine }) => Math.abs(machine.x - place.x) * 2 < place.width && Math.abs(machine.y - place.y) * 2 < place.depth,
  );
  return ghostOf(scene, place, under ?? null);
}

type Footprint = Pick<Hood, 'x' | 'y' | 'rotationDeg' | 'width' | 'depth'>;

function ghostOf({ plan, room }: Scene, footprint: Footprint, over: PlacedMachine | null): Ghost {
  const id = createId(plan, 'hood');
  const lipHeight = over === null ? LIP : over.sheet.deckHeight + LIP_ABOVE_DECK;
  const height = Math.min(BODY, Math.max((room.ceilingHeight ?? Infinity) - lipHeight, 50));
  return {
    label: 'Add hood',
    recipe: addHood({ id, ...footprint, lipHeight, height, exhaust: null, cavityAir: null }),
    ids: [id],
    readouts: sizeReadouts(footprint),
  };
}

function sizeReadouts({ x, y, width, depth, rotationDeg }: Footprint): Readout[] {
  if (rotationDeg % 90 !== 0) return [];
  const [w, d] = rotationDeg % 180 === 0 ? [width, depth] : [depth, width];
  return [
    { kind: 'length', from: { x: x - w / 2, y: y + d / 2 }, to: { x: x + w / 2, y: y + d / 2 }, value: w },
    { kind: 'length', from: { x: x + w / 2, y: y - d / 2 }, to: { x: x + w / 2, y: y + d / 2 }, value: d },
  ];
}
