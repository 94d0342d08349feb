import { along, directionTo, distance, isSimple, type Point } from '../../geometry';
import { createId, type Plan, type Recipe } from '../../plan';
import { aimOf } from '../gestures/aim';
import { raysFrom, type SnappedPoint, snapPoint } from '../snap/snapPoint';
import { roundTo } from '../snap/step';
import type { EditorState, KeyInput, PointerInput, Preview, Readout } from '../types';
import { commitPreview, plainPreview } from './commitPreview';
import { CHOOSE, type Ghost, showGhost } from './ghost';
import { isDrag, pressAt } from './press';
import type { Step, Tool } from './tool';
import type { DrawRoomState } from './toolState';
import { typedLength, typeKey } from './typed';

type In<N extends DrawRoomState['name']> = Extract<DrawRoomState, { name: N }>;

const idle: DrawRoomState = { tool: 'draw-room', name: 'idle' };

/** Draws the walls anew: a drag makes a rectangle; presses make corner after corner, and a length can be typed for each wall. */
export const drawRoomTool: Tool<DrawRoomState> = {
  id: 'draw-room',
  name: 'Draw the walls',
  start: () => idle,
  hint: (state) =>
    state.name === 'chaining'
      ? `Press the next corner, or type the length of the wall${state.typed === '' ? '' : `: ${state.typed}`}. The first corner, or Enter, closes the room.`
      : 'Drag a rectangle, or press corner after corner. It takes the place of the present walls.',
  cursor: () => 'crosshair',
  transitions: {
    idle: { down: (_state, event) => ({ tool: { tool: 'draw-room', name: 'pressed', press: pressAt(event) } }) },
    pressed: { move: beginRectangle, up: beginChain, cancel: () => ({ tool: idle, preview: null }) },
    stretching: { move: stretch, up: finishRectangle, cancel: () => ({ tool: idle, preview: null }) },
    chaining: {
      move: aimNext,
      down: addPoint,
      key: typeLength,
      double: (state, _event, editor) => close(state, editor),
      cancel: () => ({ tool: idle, preview: null }),
    },
  },
};

// ---------------------------------------------------------------- a rectangle

function beginRectangle(state: In<'pressed'>, event: PointerInput, editor: EditorState): Step | null {
  if (!isDrag(state.press, event)) return null;
  return stretch({ tool: 'draw-room', name: 'stretching', from: state.press.point, to: event.point }, event, editor);
}

function stretch(state: In<'stretching'>, event: PointerInput, editor: EditorState): Step {
  const to = farCorner(state.from, event, editor);
  return { tool: { ...state, to }, preview: showRoom(editor, rectangleOf(state.from, to)) };
}

function finishRectangle(state: In<'stretching'>, event: PointerInput, editor: EditorState): Step {
  return finish(editor, rectangleOf(state.from, farCorner(state.from, event, editor)));
}

function farCorner(from: Point, event: PointerInput, editor: EditorState): Point {
  const { step } = aimOf(event, editor);
  return { x: from.x + roundTo(event.point.x - from.x, step), y: from.y + roundTo(event.point.y - from.y, step) };
}

const rectangleOf = (a: Point, b: Point): Point[] => [
  { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y) },
  { x: Math.max(a.x, b.x), y: Math.min(a.y, b.y) },
  { x: Math.max(a.x, b.x), y: Math.max(a.y, b.y) },
  { x: Math.min(a.x, b.x), y: Math.max(a.y, b.y) },
];

// ---------------------------------------------------------------- corner after corner

function beginChain({ press }: In<'pressed'>, event: PointerInput, editor: EditorState): Step {
  const tool: DrawRoomState = { tool: 'draw-room', name: 'chaining', corners: [press.point], pointer: event.point, typed: '' };
  return { tool, preview: plainPreview(editor, {}) };
}

function aimNext(state: In<'chaining'>, event: PointerInput, editor: EditorState): Step {
  const next = nextCorner(state.corners, event, editor);
  return { tool: { ...state, pointer: next.point }, preview: showChain(editor, [...state.corners, next.point], next.guides) };
}

function addPoint(state: In<'chaining'>, event: PointerInput, editor: EditorState): Step | null {
  const { point } = nextCorner(state.corners, event, editor);
  const [first] = state.corners;
  if (first !== undefined && distance(first, point) < 1) return close(state, editor);
  return extend(state, point, editor);
}

function extend(state: In<'chaining'>, point: Point, editor: EditorState): Step | null {
  const last = state.corners.at(-1);
  if (last === undefined || distance(last, point) < 1) return null;
  const corners = [...state.corners, point];
  return { tool: { ...state, corners, pointer: point, typed: '' }, preview: showChain(editor, corners, []) };
}

function typeLength(state: In<'chaining'>, event: KeyInput, editor: EditorState): Step | null {
  if (event.key === 'Enter') return state.typed === '' ? close(state, editor) : takeTyped(state, editor);
  const typed = typeKey(state.typed, event);
  if (typed !== null) return { tool: { ...state, typed } };
  return event.key === 'Backspace' && state.corners.length > 1 ? { tool: { ...state, corners: state.corners.slice(0, -1) } } : null;
}

/** The typed length, in the direction of the pointer. */
function takeTyped(state: In<'chaining'>, editor: EditorState): Step | null {
  const last = state.corners.at(-1);
  const mm = typedLength(state.typed, editor.history.present.settings.units);
  if (last === undefined) return null;
  if (mm === null) return { tool: { ...state, typed: '' }, message: { tone: 'refused', text: `“${state.typed}” is not a length.` } };
  return extend(state, along(last, directionTo(last, state.pointer), mm), editor);
}

/** Square to the wall before, upright or level, in line with the first corner, or on it. */
function nextCorner(corners: readonly Point[], event: PointerInput, editor: EditorState): SnappedPoint {
  const aim = aimOf(event, editor);
  const [first, last, before] = [corners[0], corners.at(-1), corners.at(-2)];
  if (aim.isFree || first === undefined || last === undefined) return { point: event.point, guides: [] };
  const level = { x: 1, y: 0 };
  const lines = [
    ...raysFrom(last, level),
    ...(before === undefined ? [] : raysFrom(last, directionTo(before, last))),
    ...(corners.length > 1 ? raysFrom(first, level, 'aligned') : []),
  ];
  // A line through the last corner is caught from farther off, since walls are square more often than not.
  return snapPoint(
    event.point,
    { points: corners.length > 2 ? [first] : [], lines },
    Math.max(aim.reach, distance(last, event.point) * 0.07),
    aim.step,
  );
}

function close({ corners }: In<'chaining'>, editor: EditorState): Step | null {
  if (corners.length < 3) return null;
  return finish(editor, corners);
}

// ---------------------------------------------------------------- the room

/** The walls as they would be once closed; only their lengths while they can't be closed yet. */
function showChain(editor: EditorState, corners: readonly Point[], guides: Preview['guides']): Preview {
  const shown = corners.length > 2 && isSimple(corners) ? showRoom(editor, corners) : null;
  const open = corners.slice(1).map((to, i) => ({ kind: 'square' as const, from: corners[i] ?? to, to }));
  return { ...(shown ?? plainPreview(editor, {})), guides: [...open, ...guides], readouts: lengths(corners) };
}

const lengths = (corners: readonly Point[]): Readout[] =>
  corners.slice(1).map((to, i) => ({ kind: 'length', from: corners[i] ?? to, to, value: distance(corners[i] ?? to, to) }));

function showRoom(editor: EditorState, corners: readonly Point[]): Preview | null {
  return showGhost(editor, { ...ghostOf(corners), readouts: lengths([...corners, ...corners.slice(0, 1)]) });
}

function finish(editor: EditorState, corners: readonly Point[]): Step {
  const preview = showRoom(editor, corners);
  if (preview === null)
    return {
      tool: idle,
      preview: null,
      message: { tone: 'refused', text: 'These walls cross or have no floor between them. Draw them again.' },
    };
  const lost = editor.history.present.room.openings.length;
  const message = lost === 0 ? null : ({ tone: 'note', text: 'The doors and windows of the old walls went with them.' } as const);
  return commitPreview({ ...editor, preview }, CHOOSE, { selection: [], message });
}

function ghostOf(corners: readonly Point[]): Ghost {
  return { label: 'Draw the walls', recipe: setOutline(corners), ids: [] };
}

/** New walls for the room. Openings belong to walls, so they go with the old ones. */
function setOutline(corners: readonly Point[]): Recipe {
  return (draft: Plan) => {
    draft.room.openings = [];
    draft.room.outline = [];
    for (const { x, y } of corners) draft.room.outline.push({ id: createId(draft, 'wall'), x, y });
  };
}
