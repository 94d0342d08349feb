import type { Point } from '../../geometry';

/** One end of a measured distance. */
export interface SpanEnd {
  /** What is measured to, on the plan. */
  point: Point;
  /** How far from the point its extension line begins, toward the dimension line, plan mm. */
  lift: number;
}

/** One measured distance of a dimension line. */
export interface Span {
  from: SpanEnd;
  to: SpanEnd;
  text: string;
  /** The plan's field that the number is, where it is one. */
  edit?: readonly (string | number)[];
  subject?: string;
}

/** One dimension line: its spans measured along `axis`, the line `across` (paper mm, along the right hand of the axis) from the plan's origin. */
export interface DimensionRow {
  axis: Point;
  spans: Span[];
  across: number;
  cost: number;
}

/** A dimension line and the places where it may run, of which it takes the best. */
export interface DimensionRequest {
  rows: DimensionRow[];
  /** Lines of one side of the room stay in their order: each lies outside those that were placed before it. */
  side?: string;
  /** The most that it may cost; dearer than this it is left out. Without it, it is always drawn. */
  worth?: number;
}

/** Geometry of dimensions, paper mm: ISO 129-1 in kind (from memory). */
export const DIMENSION = {
  /** From the object to the first line, and from line to line. */
  first: 9,
  step: 7.5,
  /** Extension lines leave a gap at the object and pass the dimension line. */
  gap: 1,
  pass: 1.6,
  tick: 2.4,
  /** From the line to the foot of the figures. */
  lift: 0.9,
  letter: 2.5,
} as const;
