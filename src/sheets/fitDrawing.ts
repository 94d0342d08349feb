import { type Drawing, measureDrawing } from '../drawing';
import type { Bounds } from '../geometry';

/** A drawing laid out for a scale, and the paper that it takes there. */
export interface FittedDrawing {
  drawing: Drawing;
  scaleDenominator: number;
  /** In drawing units, ink included. */
  bounds: Bounds;
}

/**
 * The largest of some scales (the n of 1 : n, smallest n first) at which a drawing fits a width and height of paper mm.
 * The drawing is laid out anew for each, since its texts keep their size. null where none fits.
 */
export function fitDrawing(
  draw: (scaleDenominator: number) => Drawing,
  scales: readonly number[],
  widthMm: number,
  heightMm: number,
): FittedDrawing | null {
  for (const scaleDenominator of scales) {
    const drawing = draw(scaleDenominator);
    const bounds = measureDrawing(drawing, scaleDenominator);
    if (bounds === null) return null;
    const isFitting =
      (bounds.maxX - bounds.minX) / scaleDenominator <= widthMm && (bounds.maxY - bounds.minY) / scaleDenominator <= heightMm;
    if (isFitting) return { drawing, scaleDenominator, bounds };
  }
  return null;
}
