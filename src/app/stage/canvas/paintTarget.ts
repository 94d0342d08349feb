import { type ItemShape, toScreen, type View } from '../../../editor';
import type { Point } from '../../../geometry';

/** As much of a canvas's 2D context as the hit graph needs. */
export interface TargetContext {
  strokeStyle: unknown;
  fillStyle: unknown;
  lineWidth: number;
  lineJoin: unknown;
  lineCap: unknown;
  beginPath: () => void;
  moveTo: (x: number, y: number) => void;
  lineTo: (x: number, y: number) => void;
  closePath: () => void;
  arc: (x: number, y: number, radius: number, from: number, to: number) => void;
  fill: () => void;
  stroke: () => void;
}

/** Paints where a press takes a thing, in the colour that the hit graph knows it by. `reachPx`: how near counts as on it. */
export function paintTarget(context: TargetContext, shape: ItemShape, view: View, reachPx: number, color: string): void {
  context.fillStyle = color;
  context.strokeStyle = color;
  for (const area of shape.areas) {
    trace(context, area, view);
    context.closePath();
    context.fill();
  }
  const reach = Math.max(shape.reach * reachPx, shape.least * view.scale);
  for (const { points, closed } of shape.lines) {
    const [first] = points;
    if (first !== undefined && points.length === 1) paintSpot(context, toScreen(view, first), reach, color);
    else paintLine(context, points, closed, view, reach);
  }
}

/** A round place about a point, px. */
export function paintSpot(context: TargetContext, { x, y }: Point, radius: number, color: string): void {
  context.fillStyle = color;
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fill();
}

function paintLine(context: TargetContext, points: readonly Point[], isClosed: boolean, view: View, reach: number): void {
  trace(context, points, view);
  if (isClosed) context.closePath();
  context.lineWidth = 2 * reach;
  context.lineJoin = 'round';
  context.lineCap = 'round';
  context.stroke();
}

function trace(context: TargetContext, points: readonly Point[], view: View): void {
  context.beginPath();
  points.forEach((point, i) => {
    const { x, y } = toScreen(view, point);
    if (i === 0) context.moveTo(x, y);
    else context.lineTo(x, y);
  });
}
