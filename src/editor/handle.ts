import { deriveScene } from '../scene';
import { commit } from './commands/history';
import { handlesFor } from './hit/handlesFor';
import { pressKey } from './keys';
import { existingIds } from './subject/subject';
import { isBusy, isShowing, startTool, stepTool, toolCursor } from './tools';
import { CHOOSE } from './tools/ghost';
import type { Step, ToolEvent } from './tools/tool';
import type { ToolChoice } from './tools/toolState';
import type { Cursor, EditorEvent, EditorState, KeyInput, PinchInput, PointerInput, ResizeInput, WheelInput } from './types';
import { fitPlan } from './view/fitPlan';
import { panBy, zoomAt } from './view/view';

/** One turn of the wheel by 100 px enlarges by about a sixth. */
const WHEEL_RATE = 0.0015;

/** One event on: the whole of the editor. Pure; the same state comes back where nothing changed. */
export function handle(state: EditorState, event: EditorEvent): EditorState {
  switch (event.type) {
    case 'resize':
      return resize(state, event);
    case 'wheel':
      return wheel(state, event);
    case 'pinch':
      return pinch(state, event);
    case 'key':
      return key(state, event);
    case 'cancel':
      return { ...cancel(state), panning: null, hover: null, hoverHandle: null };
    case 'leave':
      return leave(state);
    default:
      return pointer(state, event);
  }
}

/** Whether a key would do something, so that the browser must not have it. */
export function wantsKey(state: EditorState, input: KeyInput): boolean {
  return handle(state, input) !== state;
}

/** Takes a tool in hand; what the one before had begun is dropped. */
export function chooseTool(state: EditorState, choice: ToolChoice): EditorState {
  return { ...cancel(state), tool: startTool(choice), preview: null, hover: null, hoverHandle: null };
}

/** Shape of the pointer over the canvas. */
export function cursorFor(state: EditorState): Cursor {
  if (state.panning !== null) return 'grabbing';
  const cursor = toolCursor(state.tool);
  if (cursor !== 'default') return cursor;
  return handleCursor(state) ?? (state.hover === null ? 'default' : 'pointer');
}

/** The shape that the handle under the pointer asks for. */
function handleCursor({ history, selection: [id], view, hoverHandle }: EditorState): Cursor | null {
  if (id === undefined || hoverHandle === null) return null;
  return handlesFor(deriveScene(history.present), id, view.scale).find((handle) => handle.id === hoverHandle)?.cursor ?? null;
}

// ---------------------------------------------------------------- the view

/** A plan that filled the canvas fills it again; any other view keeps its middle. */
function resize(state: EditorState, { width, height }: ResizeInput): EditorState {
  const { viewport, view } = state;
  if (width === viewport.width && height === viewport.height) return state;
  const resized = { ...state, viewport: { width, height } };
  const fitted = fitPlan(state).view;
  const wasFitted = fitted.scale === view.scale && fitted.dx === view.dx && fitted.dy === view.dy;
  return wasFitted ? fitPlan(resized) : { ...resized, view: panBy(view, (width - viewport.width) / 2, (height - viewport.height) / 2) };
}

/** The wheel enlarges about the pointer; with shift it slides the paper sideways. */
function wheel(state: EditorState, { screen, deltaX, deltaY, shift }: WheelInput): EditorState {
  if (shift) return { ...state, view: panBy(state.view, -(deltaX || deltaY), 0) };
  return { ...state, view: zoomAt(state.view, screen, Math.exp(-deltaY * WHEEL_RATE)) };
}

function pinch(state: EditorState, { screen, factor, dx, dy }: PinchInput): EditorState {
  return { ...state, view: zoomAt(panBy(state.view, dx, dy), screen, factor) };
}

// ---------------------------------------------------------------- pointer and keys

/** The middle button slides the paper whatever tool is in hand. */
function pointer(state: EditorState, event: PointerInput): EditorState {
  const { panning } = state;
  if (event.type === 'down' && event.button === 1) return { ...state, panning: event.screen };
  if (panning === null) return event.button === 2 ? state : toTool(state, event);
  if (event.type === 'up') return { ...state, panning: null };
  if (event.type !== 'move') return state;
  return { ...state, panning: event.screen, view: panBy(state.view, event.screen.x - panning.x, event.screen.y - panning.y) };
}

/** A key goes to the tool first, then to the table. Undo in the middle of a gesture drops the gesture. */
function key(state: EditorState, event: KeyInput): EditorState {
  if (event.key === 'Escape') return escape(state);
  const step = stepTool(event, state);
  if (step !== null) return apply(state, step);
  if (!isBusy(state.tool)) return pressKey(state, event);
  return event.ctrl && event.key.toLowerCase() === 'z' ? cancel(state) : state;
}

/** Escape lets go one thing at a time: the gesture, the tool, the handle, the choice. */
function escape(state: EditorState): EditorState {
  if (isBusy(state.tool)) return cancel(state);
  if (state.tool.tool !== 'select') return { ...cancel(state), tool: CHOOSE, preview: null };
  if (state.handle !== null) return { ...state, handle: null };
  return state.selection.length > 0 ? { ...state, selection: [] } : state;
}

function cancel(state: EditorState): EditorState {
  return toTool(state, { type: 'cancel' });
}

/** What was only shown where the pointer lay goes with it; the tool stays in hand, and so does what was begun. */
function leave(state: EditorState): EditorState {
  const rested = isShowing(state.tool) ? cancel(state) : state;
  return rested.hover === null && rested.hoverHandle === null ? rested : { ...rested, hover: null, hoverHandle: null };
}

function toTool(state: EditorState, event: ToolEvent): EditorState {
  const step = stepTool(event, state);
  return step === null ? state : apply(state, step);
}

/** What a tool answered, laid over the state. What is chosen must be there. */
function apply(state: EditorState, { commit: transaction, ...parts }: Step): EditorState {
  const base = transaction === undefined ? state : commit(state, transaction);
  const next = { ...base, ...parts };
  return { ...next, selection: existingIds(next.history.present, next.selection) };
}
