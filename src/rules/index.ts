export {
  type Ask,
  CHECK_GROUPS,
  type Check,
  type CheckGroup,
  type ElevationPlace,
  type Finding,
  type MeasuredValue,
  type Measurement,
  type MeasureUnit,
  type Offer,
  type Place,
  type Relation,
  type Repair,
  type Source,
  VERDICTS,
  type Verdict,
} from './check';
export { compute, explain, withSources } from './compute';
export { deriveFigures } from './deriveFigures';
export type { Entries, EntryRow } from './entries';
export { type Derivation, FIGURE_GROUPS, type Figure, type FigureGroup, type FigureReading, type FigureRule } from './figure';
export { type Formula, formula } from './formula';
export { inOrder } from './inOrder';
export { type Band, forReference, type Judgement, judge, type Limit, limit, narrow } from './limit';
export { createMessages, type Message, type NoParams } from './message';
export type { Name } from './name';
export { readFigure, readingsFor, readOf } from './readFigure';
export { type Example, type FormulaRecord, type FormulaResult, type FormulaSource, findOutOfRange, type Note } from './record';
export type { RecordUnit } from './recordUnit';
export { createRefusal, type Refusal, type RefusalCode, type RefusalParams } from './refusal';
export { type RuleRecord, type Ruling, ruling } from './ruling';
export { deriveWorstVerdict, findRepairs, runChecks } from './runChecks';
export { SOURCES, type SourceKey } from './sources';
export type { SourceDocument } from './sources/sourceDocument';
export { askDataSheet } from './support/askDataSheet';
export { bisect } from './support/bisect';
export { type Bound, governing, strictest } from './support/bounds';
export { isOver, isUnder } from './support/compare';
export { type DemandMessages, needDemand } from './support/demand';
export { deriveAfter } from './support/deriveAfter';
export { editHood, editMachine, editRun, editTable, editThing } from './support/drafts';
export { editHookUp } from './support/editHookUp';
export { holdAgainst, type Said } from './support/holdAgainst';
export { type HoldingMessages, holdReading, holdUnknown } from './support/holdReading';
export { interpolate, type Points } from './support/interpolate';
export { feet, inches } from './support/lengths';
export { boundOf, lengthOf } from './support/limitOf';
export { measured } from './support/measured';
export { nameBody, nameFitting, nameHood, nameLine, nameMachine, nameOwner, nameRun, nameTable, nameThing } from './support/nameItems';
export { askOrder, correctOrder, correctOrderId, isOrderEmpty, type OrderField, type OrderMessages } from './support/order';
export { pick } from './support/pick';
export {
  areaPlace,
  connectionPlace,
  fittingPlace,
  machinePlace,
  machinesPlace,
  pointPlace,
  runPlace,
  segmentPlace,
  severalPlaces,
  spotPlace,
  tablePlace,
  thingsPlace,
  wayPlace,
} from './support/places';
export { printedLeast, printedLength, printedMost } from './support/printedLimit';
export { askFor, notesOf, refuse } from './support/readings';
export { staysClear } from './support/staysClear';
export { list, phaseWords, powerWords } from './support/words';
export { isAtLeast as holdsAtLeast, isAtMost as holdsAtMost, TOLERANCE } from './tolerance';
