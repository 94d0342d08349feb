import { copySelection, cutSelection } from './clipboard/copy';
import { duplicateSelection, pasteClip } from './clipboard/paste';
import { cycleSelection } from './commands/cycleSelection';
import { deleteSelection } from './commands/deleteSelection';
import { redo, undo } from './commands/history';
import { nudgeSelection, rotateSelection } from './commands/moveSelection';
import { selectAll } from './commands/select';
import { nudgeFor } from './snap/step';
import type { EditorState, KeyInput } from './types';
import { fitPlan } from './view/fitPlan';
import { panBy, zoomAt } from './view/view';

type Act = (state: EditorState, key: KeyInput) => EditorState;

/** How far an arrow key slides the paper when nothing is chosen, px. */
const PAN_PX = 60;

/** One press of + or −. */
const ZOOM_STEP = 1.25;

/** What the keys do when the tool in hand has no use for them. With shift, arrows go ten times as far. */
const KEYS: Readonly<Record<string, Act>> = {
  arrowleft: arrow(-1, 0),
  arrowright: arrow(1, 0),
  arrowup: arrow(0, -1),
  arrowdown: arrow(0, 1),
  delete: deleteSelection,
  backspace: deleteSelection,
  r: (state, { shift }) => rotateSelection(state, shift ? -90 : 90),
  tab: (state, { shift }) => cycleSelection(state, shift),
  '+': (state) => zoom(state, ZOOM_STEP),
  '=': (state) => zoom(state, ZOOM_STEP),
  '-': (state) => zoom(state, 1 / ZOOM_STEP),
  '0': fitPlan,
};

/** With ctrl or the command key. */
const CTRL_KEYS: Readonly<Record<string, Act>> = {
  a: selectAll,
  c: copySelection,
  x: cutSelection,
  v: pasteClip,
  d: duplicateSelection,
  z: (state, { shift }) => (shift ? redo(state) : undo(state)),
  y: redo,
};

/** A key through the table; the same state where it means nothing. */
export function pressKey(state: EditorState, key: KeyInput): EditorState {
  if (key.alt) return state;
  const act = (key.ctrl ? CTRL_KEYS : KEYS)[key.key.toLowerCase()];
  return act === undefined ? state : act(state, key);
}

function arrow(dx: number, dy: number): Act {
  return (state, { shift }) => {
    if (state.selection.length === 0) return { ...state, view: panBy(state.view, -dx * PAN_PX, -dy * PAN_PX) };
    const by = nudgeFor(state.history.present.settings.units, state.view.scale) * (shift ? 10 : 1);
    return nudgeSelection(state, { x: dx * by, y: dy * by });
  };
}

function zoom(state: EditorState, factor: number): EditorState {
  const { width, height } = state.viewport;
  return { ...state, view: zoomAt(state.view, { x: width / 2, y: height / 2 }, factor) };
}
