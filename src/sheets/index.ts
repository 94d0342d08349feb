export { findPaper, PAPERS, type PaperName } from './papers';
export { drawPlanSheet, drawSheet, SHEETS } from './registry';
export { parseScale, scaleWords, usualScales } from './scales';
export type { Sheet, SheetKind, SheetOptions } from './sheet';
