import { createPointerEvent, drawOverlay, type EditorState, handle, select, shownPlan, toScreen } from '../../editor';
import type { Point } from '../../geometry';
import type { Plan } from '../../plan';
import { DAY, renderCanvas } from '../../render';
import { readState } from '../store/store';
import { deriveMotionWork, deriveWork, type Work } from '../store/work';
import { divideDrawing } from './divideDrawing';
import { deriveDenominator, PX_PER_PAPER_MM } from './screenScale';

/** How many moves the loop of a rehearsal has, and how far it goes, px. */
const MOVES = 48;
const REACH = 110;

/**
 * Drags the first machine of the plan that is open round once, on a copy and out of sight, whenever the browser has nothing else to
 * do. A browser compiles what runs often and only then is it fast: so the hand's first drag is as smooth as its tenth.
 */
export function rehearseDrag(): void {
  let left = MOVES;
  let plan: Plan | null = null;
  let moves: Iterator<void> = [][Symbol.iterator]();
  const step = () => {
    const { editor } = readState();
    // The hand itself goes before.
    if (editor.preview !== null || left === 0) return;
    if (editor.history.present !== plan) {
      plan = editor.history.present;
      moves = rehearse(editor);
    }
    left -= 1;
    if (moves.next().done !== true) whenIdle(step);
  };
  whenIdle(step);
}

const whenIdle = (step: () => void) => (typeof requestIdleCallback === 'function' ? requestIdleCallback(step) : setTimeout(step, 50));

/** One move at each step. */
function* rehearse(editor: EditorState): Generator<void, void> {
  const [machine] = editor.history.present.machines;
  const canvas = document.createElement('canvas').getContext('2d');
  if (machine === undefined || canvas === null) return;
  const before = deriveWork(editor.history.present);
  const start = toScreen(editor.view, machine);
  let state = send(send(select(editor, [machine.id]), 'move', start), 'down', start);
  for (let i = 1; i <= MOVES; i += 1) {
    state = send(state, 'move', loopAt(start, i));
    paint(before, state, canvas);
    yield;
  }
}

const send = (state: EditorState, type: 'move' | 'down', at: Point): EditorState => handle(state, createPointerEvent(state.view, type, at));

function loopAt({ x, y }: Point, move: number): Point {
  const turn = (2 * Math.PI * move) / MOVES;
  return { x: x + REACH * Math.sin(turn), y: y + REACH * (1 - Math.cos(turn)) * 0.5 };
}

function paint(before: Work, state: EditorState, canvas: CanvasRenderingContext2D): void {
  const { view, viewport, history } = state;
  const now = deriveMotionWork(before, shownPlan(state));
  const options = { units: history.present.settings.units, scaleDenominator: deriveDenominator(view.scale) };
  const { moving } = divideDrawing(before.scene, now, options, null);
  renderCanvas(canvas, [...moving, ...drawOverlay(state, now.scene)], {
    ...view,
    ...viewport,
    pxPerPaperMm: PX_PER_PAPER_MM,
    palette: DAY,
  });
}
