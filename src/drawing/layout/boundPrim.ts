import { type Bounds, boundsOf, growBounds, unionBounds } from '../../geometry';
import type { Drawing, Prim } from '../drawing';
import { textBox } from '../typeset/textBox';
import { cornersOf } from './box';

/** The box around a primitive's geometry, without its ink; remembered, as a drawing's parts stay the same objects while nothing of them changes. */
export function boundPrim(prim: Prim): Bounds {
  const known = BOXES.get(prim);
  if (known !== undefined) return known;
  const box = measure(prim);
  BOXES.set(prim, box);
  return box;
}

const BOXES = new WeakMap<Prim, Bounds>();

function measure(prim: Prim): Bounds {
  switch (prim.kind) {
    case 'line':
      return boundsOf(prim.points);
    case 'area':
      return boundsOf(prim.rings.flat());
    case 'arc':
      return growBounds(boundsOf([prim.centre]), prim.radius);
    case 'text':
    case 'symbol':
      return boundsOf([prim.at]);
  }
}

/** The box around a drawing; null for an empty one. With its ink (letters, symbols, line widths) when `unit`, drawing units per paper mm, is given. */
export function measureDrawing(drawing: Drawing, unit = 0): Bounds | null {
  return drawing
    .map((prim) => boundInk(prim, unit))
    .reduce<Bounds | null>((all, box) => (all === null ? box : unionBounds(all, box)), null);
}

function boundInk(prim: Prim, unit: number): Bounds {
  if (prim.kind === 'text') return boundsOf(cornersOf(textBox(prim, unit)));
  if (prim.kind === 'symbol') {
    const at = { x: prim.at.x + (prim.shift?.x ?? 0) * unit, y: prim.at.y + (prim.shift?.y ?? 0) * unit };
    return growBounds(boundsOf([at]), (prim.shape === 'arrow' ? 1 : 0.5) * prim.size * unit);
  }
  return growBounds(boundPrim(prim), ((prim.width ?? 0) / 2) * unit);
}
