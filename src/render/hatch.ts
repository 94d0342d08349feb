import type { Point, Polygon } from '../geometry';
import type { Dots, Hatch } from './inks';

/** A window onto the drawing, in its unit. */
export interface Window {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

/** One line of a hatch. */
export interface HatchLine {
  a: Point;
  b: Point;
}

/**
 * The lines of a hatch inside rings (even–odd), as many as cross the window. Hatches are anchored at the
 * drawing's origin, so that neighbours share one pattern and nothing swims. `unit`: drawing units per paper mm.
 */
export function hatchRings(rings: readonly Polygon[], hatch: Hatch, unit: number, window?: Window): HatchLine[] {
  const turn = (hatch.angleDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const turned = rings.map((ring) => ring.map((p) => ({ x: p.x * cos + p.y * sin, y: p.y * cos - p.x * sin })));
  const back = (x: number, y: number): Point => ({ x: x * cos - y * sin, y: x * sin + y * cos });
  const seen = window === undefined ? undefined : turnWindow(window, cos, sin);
  return scanRows(turned, hatch.spacing * unit, 0, seen).flatMap(({ y, spans }) =>
    spans.map(([from, to]) => ({ a: back(from, y), b: back(to, y) })),
  );
}

/** The dots of a pattern inside rings, as many as lie in the window. */
export function dotRings(rings: readonly Polygon[], dots: Dots, unit: number, window?: Window): Point[] {
  const step = dots.spacing * unit;
  const edge = (dots.diameter * unit) / 2;
  return scanRows(rings, step / 2, step / 4, window).flatMap(({ y, row, spans }) =>
    spans.flatMap(([from, to]) => dotsBetween(from + edge, to - edge, y, step, row % 2 === 0 ? 0 : step / 2)),
  );
}

function dotsBetween(from: number, to: number, y: number, step: number, shift: number): Point[] {
  const points: Point[] = [];
  for (let i = Math.ceil((from - shift) / step); shift + i * step <= to; i += 1) points.push({ x: shift + i * step, y });
  return points;
}

interface Row {
  y: number;
  row: number;
  spans: [number, number][];
}

function scanRows(rings: readonly Polygon[], step: number, shift: number, window: Window | undefined): Row[] {
  const ys = rings.flatMap((ring) => ring.map((p) => p.y));
  const low = Math.max(Math.min(...ys), window?.minY ?? Number.NEGATIVE_INFINITY);
  const high = Math.min(Math.max(...ys), window?.maxY ?? Number.POSITIVE_INFINITY);
  const rows: Row[] = [];
  for (let row = Math.ceil((low - shift) / step); shift + row * step < high; row += 1) {
    const y = shift + row * step;
    rows.push({ y, row, spans: spansAt(rings, y, window) });
  }
  return rows;
}

function spansAt(rings: readonly Polygon[], y: number, window: Window | undefined): [number, number][] {
  const xs = rings.flatMap((ring) => crossingsAt(ring, y)).sort((a, b) => a - b);
  const spans: [number, number][] = [];
  for (let i = 0; i + 1 < xs.length; i += 2) {
    const from = Math.max(xs[i] ?? 0, window?.minX ?? Number.NEGATIVE_INFINITY);
    const to = Math.min(xs[i + 1] ?? 0, window?.maxX ?? Number.POSITIVE_INFINITY);
    if (to > from) spans.push([from, to]);
  }
  return spans;
}

function crossingsAt(ring: Polygon, y: number): number[] {
  const xs: number[] = [];
  for (let i = 0; i < ring.length; i += 1) {
    const [a, b] = [ring[i], ring[(i + 1) % ring.length]];
    if (a === undefined || b === undefined || a.y <= y === b.y <= y) continue;
    xs.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
  }
  return xs;
}

function turnWindow(window: Window, cos: number, sin: number): Window {
  const corners = [
    [window.minX, window.minY],
    [window.maxX, window.minY],
    [window.maxX, window.maxY],
    [window.minX, window.maxY],
  ].map(([x = 0, y = 0]) => ({ x: x * cos + y * sin, y: y * cos - x * sin }));
  const [xs, ys] = [corners.map((p) => p.x), corners.map((p) => p.y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}
