/**
 * The editor: interaction without React or DOM. The app turns browser events into `EditorEvent`s,
 * passes them to `handle(state, event)` and draws what comes back: `shownPlan(state)` with
 * `drawOverlay(state, scene)` above it.
 */

export type { FieldPath, LineConfiguration } from '../plan';
export type { Clip } from './clipboard/clip';
export { copySelection, cutSelection } from './clipboard/copy';
export { duplicateSelection, pasteClip } from './clipboard/paste';
export { cycleSelection } from './commands/cycleSelection';
export { deleteSelection } from './commands/deleteSelection';
export { commit, redo, undo } from './commands/history';
export { nudgeSelection, rotateSelection } from './commands/moveSelection';
export { dismissMessage, select, selectAll } from './commands/select';
export { createEditor, openPlan, shownPlan } from './createEditor';
export type { Field, FieldGroup, FieldKind, FieldOption, FieldValue } from './fields/field';
export { fieldAt, fieldsFor, SECTIONS, type Section } from './fields/fieldsFor';
export { formatField } from './fields/fieldText';
export { type FieldResult, setField, setFieldText } from './fields/setField';
export { wallLengthPath } from './fields/wallFields';
export { chooseTool, cursorFor, handle, wantsKey } from './handle';
export type { Handle } from './hit/handle';
export { handlesFor } from './hit/handlesFor';
export { type Hit, hitTest } from './hit/hitTest';
export { type AddLineOptions, addLine } from './line/addLine';
export { applyRepair } from './line/applyRepair';
export { convertConfiguration, swapHand } from './line/configureLine';
export { insertStation } from './line/insertStation';
export type { Outcome } from './line/outcome';
export {
  addPointToRun,
  addTableFitting,
  addTableLeg,
  removePointOfRun,
  removeTableLeg,
  setTableFree,
  turnTableRound,
} from './line/shapeCommands';
export type { Item, ItemGroup } from './lists/item';
export { findItem, listItems } from './lists/listItems';
export { drawOverlay } from './overlay/drawOverlay';
export { type RestoreResult, restoreSession, serializeSession } from './session/session';
export { hintOf, TOOLS } from './tools/index';
export type { ThingToAdd, ToolChoice, ToolId, ToolState } from './tools/toolState';
export type * from './types';
export { fitPlan } from './view/fitPlan';
export { createPointerEvent } from './view/pointerEvent';
export { fitView, toPlan, toScreen, zoomAt } from './view/view';
