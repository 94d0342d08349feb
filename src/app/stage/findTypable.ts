import { measureTextWidth, type TextPrim } from '../../drawing';
import { toScreen } from '../../editor';
import type { Point } from '../../geometry';
import { type AppState, readState } from '../store/store';
import { deriveStillDrawing } from './drawings';
import { PX_PER_PAPER_MM } from './screenScale';

/** The dimension under a place on the canvas that can be typed into, if any. */
export function findTypable(screen: Point): AppState['typing'] {
  const { editor } = readState();
  if (editor.tool.tool !== 'select') return null;
  for (const prim of deriveStillDrawing(readState())) {
    if (prim.kind !== 'text' || !prim.edit) continue;
    const middle = middleOf(prim, editor.view);
    if (!isWithin(screen, middle, prim)) continue;
    return { path: prim.edit, text: prim.text, x: middle.x, y: middle.y };
  }
  return null;
}

function middleOf(prim: TextPrim, view: Parameters<typeof toScreen>[0]): Point {
  const at = toScreen(view, prim.at);
  const shift = prim.shift ?? { x: 0, y: 0 };
  const [along, across] = [anchorShift(prim), baselineShift(prim)];
  const turn = ((prim.angleDeg ?? 0) * Math.PI) / 180;
  return {
    x: at.x + shift.x * PX_PER_PAPER_MM + along * Math.cos(turn) - across * Math.sin(turn),
    y: at.y + shift.y * PX_PER_PAPER_MM + along * Math.sin(turn) + across * Math.cos(turn),
  };
}

const widthOf = (prim: TextPrim) => measureTextWidth(prim.text, prim.size, prim.weight) * PX_PER_PAPER_MM;

const anchorShift = (prim: TextPrim) => ({ start: 0.5, middle: 0, end: -0.5 })[prim.anchor ?? 'start'] * widthOf(prim);

const baselineShift = (prim: TextPrim) => ({ top: 0.5, middle: 0, bottom: -0.5 })[prim.baseline ?? 'bottom'] * prim.size * PX_PER_PAPER_MM;

/** Within the text's own box, turned with it, grown by a few px for fingers. */
function isWithin(p: Point, middle: Point, prim: TextPrim): boolean {
  const turn = (-(prim.angleDeg ?? 0) * Math.PI) / 180;
  const [x, y] = [p.x - middle.x, p.y - middle.y];
  const along = x * Math.cos(turn) - y * Math.sin(turn);
  const across = x * Math.sin(turn) + y * Math.cos(turn);
  return Math.abs(along) <= widthOf(prim) / 2 + 5 && Math.abs(across) <= (prim.size * PX_PER_PAPER_MM) / 2 + 5;
}
