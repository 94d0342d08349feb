import { type TextPrim, textBox } from '../../../drawing';
import { toScreen, type View } from '../../../editor';
import type { Point } from '../../../geometry';
import { PX_PER_PAPER_MM } from '../screenScale';

/** How far around its letters a number of a dimension can be pressed, px. */
const AIR_PX = 5;

/** The number of a dimension that can be pressed and typed into: path of its field, its text, its middle on the canvas (px). */
export interface Figure {
  readonly path: readonly (string | number)[];
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** What a press on a number opens; null where it is no field of the plan. */
export function figureOf(prim: TextPrim, view: View): Figure | null {
  if (prim.edit === undefined) return null;
  const { centre } = textBox(prim, PX_PER_PAPER_MM / view.scale);
  return { path: prim.edit, text: prim.text, ...toScreen(view, centre) };
}

/** The corners of the place where a number is pressed, px: its letters and a little air, turned with it. */
export function figureCorners(prim: TextPrim, view: View): Point[] {
  const { centre, d, halfLength, halfHeight } = textBox(prim, PX_PER_PAPER_MM / view.scale);
  const { x, y } = toScreen(view, centre);
  const [along, across] = [halfLength * view.scale + AIR_PX, halfHeight * view.scale + AIR_PX];
  return (
    [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ] as const
  ).map(([i, j]) => ({ x: x + d.x * i * along - d.y * j * across, y: y + d.y * i * along + d.x * j * across }));
}
