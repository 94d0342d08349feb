import type { Point } from '../../geometry';
import { type Drawing, mapDrawing, type Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { at } from './elevationFrame';

/** Heights in which nothing is to be seen: they are drawn shortened, between break lines. */
export interface HeightBreak {
  /** Above the floor, mm. */
  from: number;
  to: number;
}

/** What is left of a shortened height. */
const KEPT = 0.12;

/** Where a point of true height comes to lie once the empty heights are shortened. */
export const createShorten =
  (breaks: readonly HeightBreak[]) =>
  ({ x, y }: Point): Point => ({ x, y: y + breaks.reduce((sum, b) => sum + lossBelow(b, -y), 0) });

/** A drawing of true heights with the empty ones shortened, and a break line across each. Texts are placed afterwards, where there is room then. */
export function breakHeights(drawing: Drawing, breaks: readonly HeightBreak[], from: number, to: number): Prim[] {
  const lines = breaks.map((b) => drawBreakLine(from, to, (b.from + b.to) / 2));
  return mapDrawing([...drawing, ...lines], createShorten(breaks));
}

/** How much of a height lies in the shortened part, less what is kept of it. */
const lossBelow = (b: HeightBreak, z: number): number => Math.max(0, Math.min(z, b.to) - b.from) * (1 - KEPT);

/** A zigzag across the drawing. */
function drawBreakLine(from: number, to: number, z: number): Prim {
  const step = 120;
  const count = Math.max(2, Math.round((to - from) / step));
  const points = Array.from({ length: count + 1 }, (_, i) => at(from + ((to - from) * i) / count, z + (i % 2 === 0 ? 90 : -90)));
  return createPen('notes').line(points, { stroke: 'hairline', width: WIDTH.narrow });
}
