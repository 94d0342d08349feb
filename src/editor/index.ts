/**
 * The editor: interaction without React or DOM. The app turns browser events into `EditorEvent`s,
 * passes them to `handle(state, event)` and draws what comes back: `shownPlan(state)` (the preview's plan
 * or the present one), `drawOverlay(state, scene)` (selection, handles, guides), `state.preview?.readouts`.
 *
 * Functions (all pure):
 *   createEditor(plan, viewport): EditorState              openPlan(state, plan): EditorState
 *   handle(state, event): EditorState                      wantsKey(state, key): boolean   (whether to keep the key from the browser)
 *   createPointerEvent(view, type, screen, options): PointerInput
 *   shownPlan(state): Plan                                 hintOf(tool): string            (what the tool waits for, in plain words)
 *   cursorFor(state): 'default' | 'grab' | 'grabbing' | 'move' | 'crosshair' | 'ns-resize' | 'ew-resize' | …
 *   chooseTool(state, choice: ToolChoice)                  TOOLS: { id, name }[]
 *   select(state, ids)  commit(state, transaction)  undo(state)  redo(state)  dismissMessage(state)
 *   copySelection  cutSelection  pasteClip  duplicateSelection  deleteSelection  selectAll  cycleSelection(state, back)
 *   rotateSelection(state, degrees)  nudgeSelection(state, dx, dy)
 *   zoomAt(view, screen, factor)  fitView(bounds, viewport): View  fitPlan(state): EditorState  toPlan(view, screen)  toScreen(view, point)
 *   hitTest(scene, point, tolerance): Hit[]  handlesFor(scene, id, scale): Handle[]
 *   fieldsFor(plan, scene, id): Field[]  (id of a thing, or '@room' '@demand' '@supply' '@order' '@title' '@settings')
 *   setField(plan, path, value) / setFieldText(plan, path, text, units): { ok: true, transaction } | { ok: false, problem }
 *   insertStation(plan, machine, kind, after)  addLine(plan, options)  convertConfiguration(plan, machine, to)
 *   swapHand(plan, machine)  applyRepair(plan, finding, repair)   each: { ok: true, transaction, select } | { ok: false, problem }
 *   listItems(scene): ItemGroup[]
 *   serializeSession(state): string  restoreSession(text, viewport): { ok: true, state } | { ok: false, problem }
 */
export type { Clip } from './clipboard/clip';
export type { Field, FieldGroup, FieldKind, FieldOption, FieldValue } from './fields/field';
export type { FieldPath } from '../plan';
export type { Item, ItemGroup } from './lists/item';
export type { LineConfiguration, ThingToAdd, ToolChoice, ToolId, ToolState } from './tools/toolState';
export type * from './types';
