export { createManual } from './createManual';
export { CHAPTERS, renderManual } from './renderManual';
export { searchManual } from './searchManual';
export { MANUAL_KINDS, type ManualEntry, type ManualKind, type ManualPart } from './types';
