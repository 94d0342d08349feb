export { createManual } from './createManual';
export { CHAPTERS, renderManual } from './renderManual';
export { searchManual } from './searchManual';
export { MANUAL_KINDS, type ManualEntry, type ManualPart } from './types';
