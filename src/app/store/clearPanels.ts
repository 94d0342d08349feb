import { type Box, overlaps } from '../../drawing';
import type { View, Viewport } from '../../editor';
import type { Bounds } from '../../geometry';
import type { Panel } from '../stage/panels';

/** What is drawn at one scale, plan mm: its extent, and boxes that cover its ink. */
export interface Ink {
  readonly bounds: Bounds;
  readonly boxes: readonly Box[];
}

/** How much smaller the drawing is tried each time, how often, and into how many steps the free paper beside it is divided. */
const SHRINK = 0.98;
const TRIES = 16;
const STEPS = 12;

/**
 * The view with nothing drawn under the panels: slid as little as will do, or else as much smaller as it must be. Where
 * nothing helps it stays as it is. `inkAt` tells what is drawn at a scale; `margin` px stay free around it.
 */
export function clearPanels(
  view: View,
  viewport: Viewport,
  panels: readonly Panel[],
  margin: number,
  inkAt: (scale: number) => Ink | null,
): View {
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const scale = view.scale * SHRINK ** attempt;
    const ink = inkAt(scale);
    if (ink === null) return view;
    const clear = findClear(attempt === 0 ? view : centre(ink.bounds, viewport, scale), viewport, panels, margin, ink);
    if (clear !== null) return clear;
  }
  return view;
}

function centre({ minX, maxX, minY, maxY }: Bounds, { width, height }: Viewport, scale: number): View {
  return { scale, dx: width / 2 - ((minX + maxX) / 2) * scale, dy: height / 2 - ((minY + maxY) / 2) * scale };
}

/** The view itself or one slid within the margins, the nearest that is clear. */
function findClear(view: View, viewport: Viewport, panels: readonly Panel[], margin: number, { bounds, boxes }: Ink): View | null {
  const xs = slides(bounds.minX * view.scale + view.dx, bounds.maxX * view.scale + view.dx, viewport.width, margin);
  const ys = slides(bounds.minY * view.scale + view.dy, bounds.maxY * view.scale + view.dy, viewport.height, margin);
  const tries = xs.flatMap((x) => ys.map((y) => ({ x, y }))).sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
  for (const { x, y } of tries) {
    const slid = { scale: view.scale, dx: view.dx + x, dy: view.dy + y };
    const covered = panels.map((panel) => boxUnder(panel, viewport, slid));
    if (!boxes.some((box) => covered.some((panel) => overlaps(box, panel)))) return slid;
  }
  return null;
}

/** How far a drawing from `low` to `high` may be slid between the margins, px; not at all first. */
function slides(low: number, high: number, size: number, margin: number): number[] {
  const [least, most] = [Math.min(0, margin - low), Math.max(0, size - margin - high)];
  return [0, ...Array.from({ length: STEPS + 1 }, (_, i) => least + ((most - least) * i) / STEPS)];
}

/** The part of the plan that a panel lies on. */
function boxUnder({ left, right, top, bottom, width, height }: Panel, viewport: Viewport, { scale, dx, dy }: View): Box {
  const x = left ?? viewport.width - (right ?? 0) - width;
  const y = top ?? viewport.height - (bottom ?? 0) - height;
  return {
    centre: { x: (x + width / 2 - dx) / scale, y: (y + height / 2 - dy) / scale },
    d: { x: 1, y: 0 },
    halfLength: width / 2 / scale,
    halfHeight: height / 2 / scale,
  };
}
