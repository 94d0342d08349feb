import type { Point } from '../../geometry';
import type { View, Viewport } from '../types';

/** Limits of the zoom, px per mm: a 60 m room on a small screen, and a joint seen at six times its size. */
export const MIN_SCALE = 0.005;
export const MAX_SCALE = 20;

/** Paper left free around a plan that fills the canvas, for the dimensions outside its walls, px. */
const MARGIN_PX = 84;

/** A point of the canvas (px) on the plan (mm). */
export function toPlan(view: View, screen: Point): Point {
  return { x: (screen.x - view.dx) / view.scale, y: (screen.y - view.dy) / view.scale };
}

/** A point of the plan (mm) on the canvas (px). */
export function toScreen(view: View, point: Point): Point {
  return { x: point.x * view.scale + view.dx, y: point.y * view.scale + view.dy };
}

/** Enlarges about a point of the canvas, which stays where it is; within the limits. */
export function zoomAt(view: View, screen: Point, factor: number): View {
  const scale = clamp(view.scale * factor, MIN_SCALE, MAX_SCALE);
  const grown = scale / view.scale;
  return { scale, dx: screen.x - (screen.x - view.dx) * grown, dy: screen.y - (screen.y - view.dy) * grown };
}

/** Slides the paper by px. */
export function panBy(view: View, dx: number, dy: number): View {
  return { ...view, dx: view.dx + dx, dy: view.dy + dy };
}

/** Extent of something on the plan, mm. */
export interface Bounds {
  readonly min: Point;
  readonly max: Point;
}

/** The view that shows the bounds whole, in the middle of the canvas, with a margin in px where the canvas is large enough for it. */
export function fitView(bounds: Bounds, viewport: Viewport, marginPx = MARGIN_PX): View {
  const margin = Math.min(marginPx, viewport.width / 4, viewport.height / 4);
  const width = Math.max(bounds.max.x - bounds.min.x, 1);
  const height = Math.max(bounds.max.y - bounds.min.y, 1);
  const fitted = Math.min((viewport.width - 2 * margin) / width, (viewport.height - 2 * margin) / height);
  const scale = clamp(fitted, MIN_SCALE, MAX_SCALE);
  return {
    scale,
    dx: viewport.width / 2 - ((bounds.min.x + bounds.max.x) / 2) * scale,
    dy: viewport.height / 2 - ((bounds.min.y + bounds.max.y) / 2) * scale,
  };
}

const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
