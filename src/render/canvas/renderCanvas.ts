import { boundPrim, type Drawing, type Layer, measureTextWidth, type Prim } from '../../drawing';
import { explodeSymbol } from '../explodeSymbol';
import type { Window } from '../hatch';
import { DAY, type Palette } from '../palette';
import { type CanvasContext, type CanvasView, createBrush } from './context';
import { paintPrim } from './paintPrim';

export interface CanvasOptions extends CanvasView {
  /** Size of the canvas, px: nothing outside is painted. */
  width: number;
  height: number;
  /** Day paper when it is left out. */
  palette?: Palette;
  hiddenLayers?: ReadonlySet<Layer>;
}

/** Paints a drawing on a canvas that has been cleared. The context is left as it was. */
export function renderCanvas(context: CanvasContext, drawing: Drawing, options: CanvasOptions): void {
  const { palette = DAY, hiddenLayers } = options;
  const unit = options.pxPerPaperMm / options.scale;
  const seen = deriveSeen(options);
  context.save();
  context.lineJoin = 'round';
  context.lineCap = 'butt';
  context.textBaseline = 'alphabetic';
  context.globalAlpha = 1;
  const brush = createBrush(context, options);
  for (const prim of drawing) {
    if (hiddenLayers?.has(prim.layer) === true || !isSeen(prim, seen, unit)) continue;
    if (prim.kind !== 'symbol') paintPrim(brush, prim, palette, seen);
    else for (const part of explodeSymbol(prim, unit)) paintPrim(brush, part, palette, seen);
  }
  context.restore();
}

function deriveSeen({ width, height, scale, dx, dy }: CanvasOptions): Window {
  return { minX: -dx / scale, minY: -dy / scale, maxX: (width - dx) / scale, maxY: (height - dy) / scale };
}

function isSeen(prim: Prim, seen: Window, unit: number): boolean {
  const box = boundPrim(prim);
  const reach = reachOf(prim) * unit;
  return box.minX - reach <= seen.maxX && box.maxX + reach >= seen.minX && box.minY - reach <= seen.maxY && box.maxY + reach >= seen.minY;
}

/** How far the ink of a primitive may lie from its geometry, paper mm. */
function reachOf(prim: Prim): number {
  if (prim.kind === 'text') return measureTextWidth(prim.text, prim.size, prim.weight) + prim.size + shiftOf(prim);
  if (prim.kind === 'symbol') return prim.size + shiftOf(prim);
  return 1;
}

const shiftOf = ({ shift }: { shift?: { x: number; y: number } }) => (shift === undefined ? 0 : Math.abs(shift.x) + Math.abs(shift.y));
