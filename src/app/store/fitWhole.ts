import { type EditorState, fitPlan, fitView, type View } from '../../editor';
import { deriveScene } from '../../scene';
import { drawDimensions, drawPlan, measureDrawing } from '../../sheets';
import { deriveDenominator } from '../stage/screenScale';

/** Paper left free around the drawing, px. */
const MARGIN_PX = 18;

/** The words of a tool stand at the upper edge, over dimensions maybe, but never over the walls: so far these keep off, px. */
const HEAD_PX = 78;

/** Ink keeps its size on the screen, so what it takes is measured anew at each scale; it settles quickly. */
const PASSES = 3;

/** Views that show the whole drawing, so that it can be fitted again when the canvas grows or shrinks. */
const whole = new WeakSet<View>();

/** Brings the whole drawing into sight, with all its dimensions and notes. */
export function fitWhole(editor: EditorState): EditorState {
  const view = measureView(editor);
  whole.add(view);
  return { ...editor, view };
}

/** The view of the whole drawing; of the walls alone where the plan can't be drawn, which the page says in their place. */
function measureView(editor: EditorState): View {
  try {
    return settleView(editor);
  } catch {
    return fitPlan(editor).view;
  }
}

function settleView(editor: EditorState): View {
  const scene = deriveScene(editor.history.present);
  const wallTop = Math.min(...scene.plan.room.outline.map(({ y }) => y));
  let { view } = fitPlan(editor);
  for (let pass = 0; pass < PASSES; pass++) {
    const options = { units: scene.plan.settings.units, scaleDenominator: deriveDenominator(view.scale) };
    const bounds = measureDrawing([...drawPlan(scene, options), ...drawDimensions(scene, options)], options.scaleDenominator);
    if (bounds === null) break;
    const minY = Math.min(bounds.minY, wallTop - (HEAD_PX - MARGIN_PX) / view.scale);
    view = fitView({ min: { x: bounds.minX, y: minY }, max: { x: bounds.maxX, y: bounds.maxY } }, editor.viewport, MARGIN_PX);
  }
  return view;
}

/** Fits the drawing again after an event that asked for the whole plan, or that gave a whole one a canvas of another size. */
export function keepWhole(before: EditorState, after: EditorState): EditorState {
  if (after.view === before.view) return after;
  const isResized = after.viewport !== before.viewport && whole.has(before.view);
  return isResized || isSame(after.view, fitPlan(after).view) ? fitWhole(after) : after;
}

const isSame = (a: View, b: View) => a.scale === b.scale && a.dx === b.dx && a.dy === b.dy;
