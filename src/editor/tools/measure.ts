import { angleOf, distance, type Point, sub } from '../../geometry';
import { deriveScene } from '../../scene';
import { aimOf } from '../gestures/aim';
import { boxesOf, cornersOfBox } from '../snap/box';
import { snapPoint } from '../snap/snapPoint';
import type { EditorState, PointerInput, Readout } from '../types';
import { plainPreview } from './commitPreview';
import { isDrag, pressAt } from './press';
import type { Step, Tool } from './tool';
import type { MeasureState } from './toolState';

type In<N extends MeasureState['name']> = Extract<MeasureState, { name: N }>;

const idle: MeasureState = { tool: 'measure', name: 'idle' };

/** Measures from corner to corner; it changes nothing. Press twice, or drag. */
export const measureTool: Tool<MeasureState> = {
  id: 'measure',
  name: 'Measure',
  start: () => idle,
  hint: ({ name }) =>
    name === 'measuring' ? 'Press where to measure to.' : 'Press where to measure from. Shift keeps it level or upright.',
  cursor: () => 'crosshair',
  transitions: {
    idle: { down: begin },
    measuring: {
      down: (state, event, editor) => finish(state, event, editor),
      move: stretch,
      up: finishDrag,
      cancel: () => ({ tool: idle, preview: null }),
    },
    measured: { down: begin, cancel: () => ({ tool: idle, preview: null }) },
  },
};

function begin(_state: MeasureState, event: PointerInput, editor: EditorState): Step {
  return { tool: { tool: 'measure', name: 'measuring', from: spotAt(event, editor, null), press: pressAt(event) }, preview: null };
}

function stretch(state: In<'measuring'>, event: PointerInput, editor: EditorState): Step {
  return { tool: state, preview: plainPreview(editor, { readouts: readoutsOf(state.from, spotAt(event, editor, state.from)) }) };
}

/** A drag measures in one go; a press waits for the second. */
function finishDrag(state: In<'measuring'>, event: PointerInput, editor: EditorState): Step | null {
  return isDrag(state.press, event) ? finish(state, event, editor) : null;
}

function finish({ from }: In<'measuring'>, event: PointerInput, editor: EditorState): Step {
  const to = spotAt(event, editor, from);
  return { tool: { tool: 'measure', name: 'measured', from, to }, preview: plainPreview(editor, { readouts: readoutsOf(from, to) }) };
}

/** A corner of a thing or of the room near the pointer, else a wall; with shift, level or upright from the start. */
function spotAt(event: PointerInput, editor: EditorState, from: Point | null): Point {
  if (event.shift && from !== null) return straightFrom(from, event.point);
  const plan = editor.history.present;
  const { reach, isFree } = aimOf(event, editor);
  if (isFree) return event.point;
  const points = [...plan.room.outline.map(({ x, y }) => ({ x, y })), ...boxesOf(plan).flatMap(cornersOfBox)];
  const lines = deriveScene(plan).room.walls.map(({ a, direction }) => ({ origin: a, direction, kind: 'aligned' as const }));
  return snapPoint(event.point, { points, lines }, reach, 0).point;
}

function straightFrom(from: Point, to: Point): Point {
  const isLevel = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
  return isLevel ? { x: to.x, y: from.y } : { x: from.x, y: to.y };
}

function readoutsOf(from: Point, to: Point): Readout[] {
  const length: Readout = { kind: 'length', from, to, value: distance(from, to) };
  return distance(from, to) < 1 ? [length] : [length, { kind: 'angle', from, to, value: angleOf(sub(to, from)) }];
}
