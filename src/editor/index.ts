/**
 * The editor: interaction without React or DOM. The app turns browser events into `EditorEvent`s,
 * passes them to `handle(state, event)` and draws what comes back: `shownPlan(state)` with
 * `drawOverlay(state, scene)` above it.
 */

export { type FieldPath, type LineConfiguration } from '../plan';
export { copySelection } from './clipboard/copy';
export { duplicateSelection, pasteClip } from './clipboard/paste';
export { deleteSelection } from './commands/deleteSelection';
export { commit, redo, undo } from './commands/history';
export { nudgeSelection, rotateSelection } from './commands/moveSelection';
export { dismissMessage, select } from './commands/select';
export { createEditor, openPlan, shownPlan } from './createEditor';
export { type Field, type FieldGroup, type FieldValue } from './fields/field';
export { fieldAt, fieldsFor, SECTIONS } from './fields/fieldsFor';
export { formatField } from './fields/fieldText';
export { setField, setFieldText } from './fields/setField';
export { wallLengthPath } from './fields/wallFields';
export { chooseTool, cursorFor, handle, wantsKey } from './handle';
export { type Handle } from './hit/handle';
export { handlesFor } from './hit/handlesFor';
export { type ItemShape, shapesOf } from './hit/shapesOf';
export { addLine } from './line/addLine';
export { applyRepair } from './line/applyRepair';
export { type CommandResult } from './line/commandResult';
export { convertConfiguration, swapHand } from './line/configureLine';
export { insertStation } from './line/insertStation';
export {
  addPointToRun,
  addTableFitting,
  addTableLeg,
  removePointOfRun,
  removeTableLeg,
  setTableFree,
  turnTableRound,
} from './line/shapeCommands';
export { findItem, type Item, listItems } from './lists/listItems';
export { drawChoice, drawHandle, drawOverlay, handlesShown } from './overlay/drawOverlay';
export { formatPlateRecord, setPlateRecordText } from './record/plateRecord';
export { restoreSession, serializeSession } from './session/session';
export { deleteSheet, duplicateSheet, giveSheet, isOwnDataSheet, makeSheetOwn, openSheet } from './sheet/sheetCommands';
export { addToSheet, type DataSheetListName, removeFromSheet, SHEET_LISTS } from './sheet/sheetLists';
export { type DataSheetPart, type FieldRun, fieldsOfPart, SHEET_PARTS } from './sheet/sheetParts';
export { hintOf, TOOLS } from './tools';
export { toolForAsk } from './tools/toolForAsk';
export { type ThingToAdd, type ToolChoice } from './tools/toolState';
export type * from './types';
export { fitPlan } from './view/fitPlan';
export { createPointerEvent, REACH_PX } from './view/pointerEvent';
export { fitView, toPlan, toScreen, zoomAt } from './view/view';
