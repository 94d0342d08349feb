import type { Point } from '../geometry';
import type { Drawing, Prim } from './drawing';

export interface DrawingBounds {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

/** Bounds of a drawing's geometry, in its own unit; ink (texts, symbols) counts as the point it stands at. null when it is empty. */
export function measureDrawing(drawing: Drawing): DrawingBounds | null {
  let bounds: DrawingBounds | null = null;
  for (const prim of drawing) {
    for (const { x, y } of pointsOf(prim)) {
      bounds ??= { minX: x, minY: y, maxX: x, maxY: y };
      bounds = { minX: Math.min(bounds.minX, x), minY: Math.min(bounds.minY, y), maxX: Math.max(bounds.maxX, x), maxY: Math.max(bounds.maxY, y) };
    }
  }
  return bounds;
}

function pointsOf(prim: Prim): readonly Point[] {
  switch (prim.kind) {
    case 'line':
      return prim.points;
    case 'area':
      return prim.rings.flat();
    case 'arc':
      return [
        { x: prim.centre.x - prim.radius, y: prim.centre.y - prim.radius },
        { x: prim.centre.x + prim.radius, y: prim.centre.y + prim.radius },
      ];
    case 'text':
    case 'symbol':
      return [prim.at];
  }
}
