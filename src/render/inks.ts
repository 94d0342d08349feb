import type { Dash, Pattern } from '../drawing';

/**
 * Dashes and patterns in paper millimetres, the same for every renderer, so that screen and paper show
 * the same drawing. Lengths follow ISO 128-2 in kind (dash 12 d, gap 3 d; from memory), set to read at a line width of 0.18 to 0.35 mm.
 */
export const DASHES: Record<Dash, readonly number[]> = {
  solid: [],
  short: [1.4, 0.8],
  long: [3.6, 1],
  'dash-dot': [3.2, 0.8, 0.35, 0.8],
  dotted: [0.3, 0.9],
};

/** Parallel lines: direction clockwise from the x axis, distance and line width. */
export interface Hatch {
  kind: 'lines';
  angleDeg: number;
  spacing: number;
  width: number;
}

/** Dots in rows, every second row set off by half. */
export interface Dots {
  kind: 'dots';
  spacing: number;
  diameter: number;
}

export const PATTERNS: Record<Exclude<Pattern, 'none' | 'flat'>, Hatch | Dots> = {
  'hatch-45': { kind: 'lines', angleDeg: -45, spacing: 1.7, width: 0.13 },
  wall: { kind: 'lines', angleDeg: 45, spacing: 0.9, width: 0.13 },
  dots: { kind: 'dots', spacing: 1.9, diameter: 0.36 },
};

/** Line width where a primitive names none, paper mm. */
export const DEFAULT_WIDTH = 0.18;
export const FONT_FAMILY = 'IBM Plex Sans';
/** Width of the knock-out around a text's letters, as a part of the letter height. */
export const HALO = 0.32;
