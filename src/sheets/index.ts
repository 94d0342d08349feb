export { findPaper, PAPERS, type PaperName } from './papers';
export { drawPlanSheet } from './registry';
export { parseScale, scaleWords, usualScales } from './scales';
export type { Sheet, SheetOptions } from './sheet';
