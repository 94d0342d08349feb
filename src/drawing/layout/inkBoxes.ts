import { along, directionOf, type Point } from '../../geometry';
import type { ArcPrim, Drawing, Prim } from '../drawing';
import { textBox } from '../typeset/textBox';
import { type Box, boxAround } from './box';

/**
 * Boxes that together cover the ink of a drawing: letters, symbols and each stroke, but not the empty inside of an outline.
 * In drawing units, of which `unit` make a paper mm.
 */
export function inkBoxes(drawing: Drawing, unit: number): Box[] {
  return drawing.flatMap((prim) => boxesOf(prim, unit));
}

function boxesOf(prim: Prim, unit: number): Box[] {
  switch (prim.kind) {
    case 'text':
      return [textBox(prim, unit)];
    case 'symbol': {
      const half = (prim.shape === 'arrow' ? 1 : 0.5) * prim.size * unit;
      const centre = { x: prim.at.x + (prim.shift?.x ?? 0) * unit, y: prim.at.y + (prim.shift?.y ?? 0) * unit };
      return [{ centre, d: { x: 1, y: 0 }, halfLength: half, halfHeight: half }];
    }
    case 'line':
      return strokes(prim.closed === true ? [...prim.points, ...prim.points.slice(0, 1)] : prim.points, (prim.width ?? 0) * unit);
    case 'area':
      return prim.rings.flatMap((ring) => strokes([...ring, ...ring.slice(0, 1)], (prim.width ?? 0) * unit));
    case 'arc':
      return strokes(chordsOf(prim), (prim.width ?? 0) * unit);
  }
}

const strokes = (path: readonly Point[], width: number): Box[] => path.slice(1).map((b, i) => boxAround(path[i] ?? b, b, width));

/** Degrees of an arc that one chord stands for. */
const CHORD_DEG = 10;

function chordsOf({ centre, radius, fromDeg, toDeg }: ArcPrim): Point[] {
  const count = Math.max(1, Math.ceil((toDeg - fromDeg) / CHORD_DEG));
  return Array.from({ length: count + 1 }, (_, i) => along(centre, directionOf(fromDeg + ((toDeg - fromDeg) * i) / count), radius));
}
