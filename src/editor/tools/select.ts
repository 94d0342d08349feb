import { nearestOnSegment, type Point } from '../../geometry';
import { addCorner, addRunPoint, createId, edit, type Plan, type Transaction } from '../../plan';
import { deriveScene, type Scene } from '../../scene';
import { aimOf } from '../gestures/aim';
import type { Gesture, Hold } from '../gestures/gesture';
import { pullGesture } from '../gestures/pullGesture';
import type { Handle } from '../hit/handle';
import { handlesFor, nearestHandle } from '../hit/handlesFor';
import { itemsInFrame } from '../hit/itemsInFrame';
import { findSubject } from '../subject/subject';
import type { EditorState, Hit, PointerInput } from '../types';
import { panBy } from '../view/view';
import { commitPreview, plainPreview } from './commitPreview';
import { isDrag, isSamePlace, pressAt } from './press';
import type { Step, Tool } from './tool';
import type { LastPress, SelectState } from './toolState';

type In<N extends SelectState['name']> = Extract<SelectState, { name: N }>;

const idle = (last: LastPress | null = null): SelectState => ({ tool: 'select', name: 'idle', last });

/** Chooses things, drags them and their handles, draws a frame around several. */
export const selectTool: Tool<SelectState> = {
  id: 'select',
  name: 'Choose and move',
  start: () => idle(),
  hint: () => 'Press a thing to choose it, drag to move it.',
  cursor: (state) => (state.name === 'dragging' ? 'move' : state.name === 'panning' ? 'grabbing' : 'default'),
  transitions: {
    idle: { down: press, move: hover, double: pressTwice },
    pressed: { move: beginDrag, up: choose, cancel: () => ({ tool: idle(), preview: null }) },
    dragging: { move: drag, up: drop, cancel: () => ({ tool: idle(), preview: null }) },
    boxing: {
      move: drawBox,
      up: () => ({ tool: idle(), preview: null }),
      cancel: (state) => ({ tool: idle(), preview: null, selection: state.keep }),
    },
    panning: { move: slide, up: () => ({ tool: idle() }), cancel: () => ({ tool: idle() }) },
  },
};

/** A handle lies over everything, so nothing else is marked under it. */
function hover(_state: In<'idle'>, { under: [top] }: PointerInput, editor: EditorState): Step | null {
  const hoverHandle = top?.handle ?? null;
  const id = hoverHandle === null ? (top?.id ?? null) : null;
  return id === editor.hover && hoverHandle === editor.hoverHandle ? null : { hover: id, hoverHandle };
}

/** A press takes a handle of what is chosen, else what is chosen already, else what lies on top. */
function press(state: In<'idle'>, event: PointerInput, editor: EditorState): Step | null {
  if (event.button !== 0) return null;
  const handle = handleUnder(event, editor);
  const under = thingsUnder(event);
  const pressed = { tool: 'select', name: 'pressed', press: pressAt(event), under, last: state.last } as const;
  if (handle !== null)
    return { tool: { ...pressed, id: handle.subject, handle: handle.id, wasChosen: true }, hover: null, hoverHandle: null };
  const chosen = under.find((id) => editor.selection.includes(id));
  const id = chosen ?? under[0] ?? null;
  const tool: SelectState = { ...pressed, id, handle: null, wasChosen: chosen !== undefined };
  if (id === null || chosen !== undefined) return { tool, hover: null, hoverHandle: null };
  return { tool, hover: null, hoverHandle: null, handle: null, selection: event.shift ? [...editor.selection, id] : [id] };
}

/** Under a finger several handles may lie: the nearest counts. */
function handleUnder({ point, under }: PointerInput, { history, selection, view }: EditorState): Handle | null {
  const [id] = selection;
  if (id === undefined || selection.length > 1) return null;
  const isUnder = (handle: Handle) => under.some((hit) => hit.id === id && hit.handle === handle.id);
  return nearestHandle(handlesFor(deriveScene(history.present), id, view.scale).filter(isUnder), point);
}

const isThing = ({ handle }: Hit) => handle === null;

const thingsUnder = ({ under }: PointerInput): string[] => under.filter(isThing).map(({ id }) => id);

/** Up without a drag. The same place again goes down to what lies below. */
function choose(state: In<'pressed'>, event: PointerInput, editor: EditorState): Step {
  const { id, handle, wasChosen, press: start } = state;
  if (handle !== null) return { tool: idle(state.last), handle };
  const last: LastPress = { screen: start.screen, id, before: id };
  if (id === null) return { tool: idle(), handle: null, selection: event.shift ? editor.selection : [] };
  if (!wasChosen) return { tool: idle(last) };
  if (event.shift) return { tool: idle(), handle: null, selection: editor.selection.filter((other) => other !== id) };
  const isAgain = state.last !== null && state.last.id === id && isSamePlace(state.last.screen, start.screen);
  const next = isAgain ? nextUnder(state, id) : id;
  return { tool: idle({ ...last, id: next, before: id }), handle: null, selection: [next] };
}

const nextUnder = ({ under }: In<'pressed'>, id: string): string => under[(under.indexOf(id) + 1) % under.length] ?? id;

function beginDrag(state: In<'pressed'>, event: PointerInput, editor: EditorState): Step | null {
  if (!isDrag(state.press, event)) return null;
  const gesture = gestureOf(state, event, editor);
  if (gesture !== null) return drag({ tool: 'select', name: 'dragging', last: null, gesture }, event, editor);
  if (event.pointer === 'touch') return slide({ tool: 'select', name: 'panning', last: null, screen: state.press.screen }, event, editor);
  const keep = event.shift ? editor.selection : [];
  return drawBox({ tool: 'select', name: 'boxing', last: null, press: state.press, keep }, event, editor);
}

/** What the drag moves; null where it draws a frame or slides the paper. A wall, and under a finger anything, must be chosen first. */
function gestureOf(state: In<'pressed'>, event: PointerInput, { history, selection }: EditorState): Gesture | null {
  const { id, handle, wasChosen, press: start } = state;
  if (id === null) return null;
  const plan = history.present;
  const common = { start: plan, from: start.point, to: event.point, held: holdOf(plan, id) };
  if (handle !== null) return { ...common, kind: 'handle', id, handle };
  const mustBeChosen = event.pointer === 'touch' || findSubject(plan, id)?.kind === 'corner';
  if (mustBeChosen && !wasChosen) return null;
  const others = selection.includes(id) ? selection.filter((other) => other !== id) : [];
  return { ...common, kind: 'move', ids: [id, ...others] };
}

/** The door that a joined table is held by when its drag begins. */
function holdOf({ tables }: Plan, id: string): Hold | null {
  const place = tables.find((table) => table.id === id)?.place;
  return place?.kind === 'joined' ? { machine: place.machine, side: place.side, reversed: false } : null;
}

function drag(state: In<'dragging'>, event: PointerInput, editor: EditorState): Step {
  const { gesture, preview } = pullGesture(state.gesture, event.point, aimOf(event, editor), editor.preview);
  return { tool: { ...state, gesture }, preview, hover: null, hoverHandle: null };
}

function drop(state: In<'dragging'>, event: PointerInput, editor: EditorState): Step {
  const { gesture, preview } = pullGesture(state.gesture, event.point, aimOf(event, editor), editor.preview);
  const handle = gesture.kind === 'handle' && gesture.handle !== 'rotate' ? gesture.handle : null;
  return commitPreview({ ...editor, preview }, idle(), { handle });
}

function drawBox(state: In<'boxing'>, event: PointerInput, editor: EditorState): Step {
  const { point: from } = state.press;
  const found = itemsInFrame(deriveScene(editor.history.present), from, event.point);
  const selection = [...new Set([...state.keep, ...found])];
  return { tool: state, selection, handle: null, preview: plainPreview(editor, { box: { from, to: event.point } }) };
}

function slide(state: In<'panning'>, event: PointerInput, editor: EditorState): Step {
  const view = panBy(editor.view, event.screen.x - state.screen.x, event.screen.y - state.screen.y);
  return { tool: { ...state, screen: event.screen }, view };
}

/** Two quick presses put a corner into a wall or a point into a run; on anything else they leave the first press's choice. */
function pressTwice(state: In<'idle'>, event: PointerInput, editor: EditorState): Step | null {
  const id = state.last?.before ?? null;
  if (id === null) return null;
  const transaction = divide(editor.history.present, id, event.point);
  return { tool: idle(), selection: [id], ...(transaction && { commit: transaction }) };
}

function divide(plan: Plan, id: string, point: Point): Transaction | null {
  const scene = deriveScene(plan);
  const wall = scene.room.walls.find((item) => item.id === id);
  if (wall !== undefined) {
    const at = nearestOnSegment(point, wall).point;
    return edit(plan, 'Add corner', addCorner(id, { id: createId(plan, 'wall'), x: at.x, y: at.y }));
  }
  const run = scene.runs.find((item) => item.run.id === id);
  return run === undefined ? null : divideRun(plan, run, point);
}

/** Puts a point into the flat leg of a run that passes nearest, at the leg's height there. */
function divideRun(plan: Plan, { run, points }: Scene['runs'][number], point: Point): Transaction | null {
  const offset = points.length - run.points.length;
  const legs = points.slice(1).map((b, i) => ({ a: points[i] ?? b, b, index: i + 1 - offset }));
  const near = legs.map((leg) => ({ ...leg, ...nearestOnSegment(point, leg) }));
  const away = (leg: { point: Point }) => Math.hypot(leg.point.x - point.x, leg.point.y - point.y);
  const best = near.filter(({ t }) => t > 0 && t < 1).sort((a, b) => away(a) - away(b))[0];
  if (best === undefined || best.index < 0) return null;
  const z = best.a.z + (best.b.z - best.a.z) * best.t;
  return edit(plan, 'Add point to duct run', addRunPoint(run.id, best.index, { x: best.point.x, y: best.point.y, z }));
}
