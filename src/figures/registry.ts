import type { FigureRule } from './types';

/** Every figure, in the order in which they are shown. */
export const FIGURES: readonly FigureRule[] = [];
