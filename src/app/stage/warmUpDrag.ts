import { createPointerEvent, drawOverlay, type EditorState, handle, select, shownPlan, toScreen } from '../../editor';
import type { Point } from '../../geometry';
import type { Plan } from '../../plan';
import { DAY, renderCanvas } from '../../render';
import { readState } from '../store/store';
import { deriveMotionWork, deriveWork, type Work } from '../store/work';
import { divideMotion } from './canvas/deriveShown';
import { deriveDenominator, PX_PER_PAPER_MM } from './screenScale';

/** How many moves the loop of a trial drag has, and how far it goes, px. */
const MOVES = 48;
const REACH = 110;

/**
 * Drags the first machine of the plan that is open round once, on a copy and out of sight, whenever the browser has nothing else to
 * do. A browser compiles what runs often and only then is it fast: so the hand's first drag is as smooth as its tenth.
 */
export function warmUpDrag(): void {
  let left = MOVES;
  let plan: Plan | null = null;
  let moves: Iterator<void> = [][Symbol.iterator]();
  const step = () => {
    const { editor } = readState();
    // The hand itself goes before.
    if (editor.preview !== null || left === 0) return;
    if (editor.history.present !== plan) {
      plan = editor.history.present;
      moves = dragRound(editor);
    }
    left -= 1;
    if (moves.next().done !== true) whenIdle(step);
  };
  whenIdle(step);
}

const whenIdle = (step: () => void) => (typeof requestIdleCallback === 'function' ? requestIdleCallback(step) : setTimeout(step, 50));

/** One move at each step. */
function* dragRound(editor: EditorState): Generator<void, void> {
  const [machine] = editor.history.present.machines;
  const canvas = document.createElement('canvas').getContext('2d');
  if (machine === undefined || canvas === null) return;
  const before = deriveWork(editor.history.present);
  const start = toScreen(editor.view, machine);
  const under = [{ id: machine.id, handle: null }];
  let state = handle(select(editor, [machine.id]), createPointerEvent(editor.view, 'down', start, { under }));
  for (let i = 1; i <= MOVES; i += 1) {
    state = handle(state, createPointerEvent(state.view, 'move', loopAt(start, i)));
    paint(before, state, canvas);
    yield;
  }
}

function loopAt({ x, y }: Point, move: number): Point {
  const turn = (2 * Math.PI * move) / MOVES;
  return { x: x + REACH * Math.sin(turn), y: y + REACH * (1 - Math.cos(turn)) * 0.5 };
}

function paint(before: Work, state: EditorState, canvas: CanvasRenderingContext2D): void {
  const { view, viewport, history } = state;
  const now = deriveMotionWork(before, shownPlan(state));
  const options = { units: history.present.settings.units, scaleDenominator: deriveDenominator(view.scale) };
  const { items, moving, motion } = divideMotion(before.scene, now, options, null);
  const things = items.filter(({ key }) => moving.has(key)).flatMap(({ prims }) => prims);
  renderCanvas(canvas, [...things, ...motion, ...drawOverlay(state, now.scene)], {
    ...view,
    ...viewport,
    pxPerPaperMm: PX_PER_PAPER_MM,
    palette: DAY,
  });
}
