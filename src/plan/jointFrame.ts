import type { DataSheet, Side } from '../catalog';
import { type Point, rotate } from '../geometry';
import type { Machine, TablePlace } from './planSchema';
import { storedDeg } from './storedDeg';

/** Start of a table's rack centre line, and the direction in which it leaves. Degrees clockwise on the paper, 0 to the right. */
export interface JointFrame {
  x: number;
  y: number;
  headingDeg: number;
}

/**
 * Where a table joined to this side of the machine begins. Its gap is taken along the side's normal and its offset
 * to the right of a person walking out of the machine, both at the rack centre line; then it turns by its skew.
 */
export function jointFrame(machine: Machine, sheet: DataSheet, side: Side, place: JointPlace): JointFrame {
  const normal = NORMALS[side];
  const right = { x: -normal.y, y: normal.x };
  const door = doorOf(sheet, side);
  const local = {
    x: door.x + normal.x * place.gap + right.x * place.offset - sheet.width / 2,
    y: door.y + normal.y * place.gap + right.y * place.offset - sheet.depth / 2,
  };
  const at = rotate(local, machine.rotationDeg);
  return {
    x: machine.x + at.x,
    y: machine.y + at.y,
    headingDeg: storedDeg(HEADINGS[side] + machine.rotationDeg + place.skewDeg),
  };
}

/** The part of a joined table's place that says how it meets the machine. */
export type JointPlace = Pick<Extract<TablePlace, { kind: 'joined' }>, 'gap' | 'offset' | 'skewDeg'>;

/** Flush, centred and square. */
export const FLUSH: JointPlace = { gap: 0, offset: 0, skewDeg: 0 };

/** Outward normals in the machine's own frame, and their directions. */
const NORMALS: Record<Side, Point> = { left: { x: -1, y: 0 }, right: { x: 1, y: 0 }, front: { x: 0, y: 1 }, back: { x: 0, y: -1 } };
const HEADINGS: Record<Side, number> = { left: 180, right: 0, front: 90, back: -90 };

function doorOf(sheet: DataSheet, side: Side): Point {
  if (side === 'left') return { x: 0, y: sheet.rackLine.left };
  if (side === 'right') return { x: sheet.width, y: sheet.rackLine.right };
  return { x: side === 'front' ? sheet.rackLine.front : sheet.width / 2, y: side === 'front' ? sheet.depth : 0 };
}
