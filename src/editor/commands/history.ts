import { type History, push, redo as redoHistory, type Transaction, undo as undoHistory } from '../../plan';
import { existingIds } from '../subject/subject';
import { isBusy, restTool } from '../tools';
import type { EditorState } from '../types';

/** Keeps a change of the plan. A gesture in progress is dropped, since it was made from the plan before. */
export function commit(state: EditorState, transaction: Transaction): EditorState {
  return withHistory(state, push(state.history, transaction));
}

/** Takes the last change back. In the middle of a gesture it drops the gesture only. */
export function undo(state: EditorState): EditorState {
  if (isBusy(state.tool)) return { ...state, tool: restTool(state), preview: null };
  return withHistory(state, undoHistory(state.history));
}

/** Does the change that was taken back last again. */
export function redo(state: EditorState): EditorState {
  return withHistory(state, redoHistory(state.history));
}

/** Changes that leave the history as it is leave the state as it is. What is no longer there is no longer chosen; what was said is past. */
function withHistory(state: EditorState, history: History): EditorState {
  if (history === state.history) return state;
  const selection = existingIds(history.present, state.selection);
  const handle = selection === state.selection ? state.handle : null;
  return { ...state, history, selection, handle, tool: restTool(state), preview: null, hover: null, hoverHandle: null, message: null };
}
