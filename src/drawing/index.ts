export { drawDimensions } from './dimensions/drawDimensions';
export {
  type ArcPrim,
  type AreaPrim,
  type Dash,
  type Drawing,
  HUES,
  type Hue,
  type Ink,
  type Layer,
  type LinePrim,
  type Pattern,
  type Prim,
  placeDrawing,
  type SymbolPrim,
  type TextPrim,
} from './drawing';
export { drawElevation, type ElevationOptions } from './elevation/drawElevation';
export { drawFindings, drawFindingsInMotion, VERDICT_SHAPES, verdictInk } from './floorPlan/drawFindings';
export { drawMarks } from './floorPlan/drawMarks';
export { drawPlan } from './floorPlan/drawPlan';
export { drawThings } from './floorPlan/drawThings';
export { numberFindings } from './floorPlan/numberFindings';
export type { PlanOptions } from './floorPlan/planOptions';
export { describeRun } from './labels/describeRun';
export { STUBS } from './labels/stubLabels';
export { boundPrim, measureDrawing } from './layout/boundPrim';
export { type Box, overlaps } from './layout/box';
export { inkBoxes } from './layout/inkBoxes';
export { LETTER, WALL_THICKNESS, WIDTH } from './support/ink';
export { createPen, type Pen } from './support/pen';
export { textBox } from './typeset/textBox';
export { CAP_HEIGHT, measureTextWidth } from './typeset/textWidth';
export { elideText, wrapText } from './typeset/wrapText';
export { CAUTION, configurationWords, measureWords, powerWords, RELATION_WORDS, sourceWords, VERDICT_NAMES } from './wording';
