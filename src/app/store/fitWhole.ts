import { type Drawing, drawDimensions, drawPlan, inkBoxes, measureDrawing } from '../../drawing';
import { type EditorState, fitPlan, fitView, type View, type Viewport } from '../../editor';
import { type Bounds, boundsOf } from '../../geometry';
import { deriveScene } from '../../scene';
import { readPanels } from '../stage/panels';
import { deriveDenominator, PX_PER_PAPER_MM } from '../stage/screenScale';
import { clearPanels, type Ink } from './clearPanels';

/** Paper left free around the drawing, px. */
const MARGIN_PX = 18;

/** The words of a tool stand at the upper edge, over dimensions maybe, but never over the walls: so far these keep off, px. */
const HEAD_PX = 78;

/** Ink keeps its size on the screen, so what it takes is measured anew at each scale; it settles quickly. */
const PASSES = 6;

/** Views that show the whole drawing, so that it can be fitted again when the canvas grows or shrinks. */
const whole = new WeakSet<View>();

/** Brings the whole drawing into sight, with all its dimensions and notes, none of it under the panels on the paper's edge. */
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

/** The largest view that settles: it begins with that of the bare walls, which is too large, and shrinks. */
function settleView(editor: EditorState): View {
  const { viewport, history } = editor;
  const inkAt = createInk(editor);
  let view = fitBounds(boundsOf(history.present.room.outline), viewport);
  for (let pass = 0; pass < PASSES; pass++) {
    const ink = inkAt(view.scale);
    if (ink === null) return view;
    view = fitBounds(ink.bounds, viewport);
  }
  return clearPanels(view, viewport, readPanels(), MARGIN_PX, inkAt);
}

const fitBounds = ({ minX, minY, maxX, maxY }: Bounds, viewport: Viewport): View =>
  fitView({ min: { x: minX, y: minY }, max: { x: maxX, y: maxY } }, viewport, MARGIN_PX);

/** What is drawn at a scale, with the head kept off the walls; laid out once for each step of the paper scale. */
function createInk({ history }: EditorState): (scale: number) => Ink | null {
  const scene = deriveScene(history.present);
  const wallTop = Math.min(...scene.plan.room.outline.map(({ y }) => y));
  const drawings = new Map<number, Drawing>();
  return (scale) => {
    const scaleDenominator = deriveDenominator(scale);
    const options = { units: scene.plan.settings.units, scaleDenominator };
    const drawing = drawings.get(scaleDenominator) ?? [...drawPlan(scene, options), ...drawDimensions(scene, options)];
    drawings.set(scaleDenominator, drawing);
    const bounds = measureDrawing(drawing, scaleDenominator);
    if (bounds === null) return null;
    const minY = Math.min(bounds.minY, wallTop - (HEAD_PX - MARGIN_PX) / scale);
    return { bounds: { ...bounds, minY }, boxes: inkBoxes(drawing, PX_PER_PAPER_MM / scale) };
  };
}

/** Fits the drawing again after an event that asked for the whole plan, or that gave a whole one a canvas of another size. */
export function keepWhole(before: EditorState, after: EditorState): EditorState {
  if (after.view === before.view) return after;
  const isResized = after.viewport !== before.viewport && whole.has(before.view);
  return isResized || isSame(after.view, fitPlan(after).view) ? fitWhole(after) : after;
}

const isSame = (a: View, b: View) => a.scale === b.scale && a.dx === b.dx && a.dy === b.dy;
