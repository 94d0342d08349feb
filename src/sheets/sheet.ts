import type { Drawing } from '../drawing';

/** One page of drawing at a true scale. */
export interface Sheet {
  title: string;
  widthMm: number;
  heightMm: number;
  /** In paper mm from the upper left corner of the page. */
  drawing: Drawing;
  /** The n of 1 : n. */
  scaleDenominator: number;
  /** The scale for people. */
  scaleText: string;
}
