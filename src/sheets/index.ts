export { drawPlanSheet, type SheetOptions } from './drawPlanSheet';
export { findPaper, PAPERS, type PaperName } from './papers';
export { parseScale, scaleWords, usualScales } from './scales';
export type { Sheet } from './sheet';
