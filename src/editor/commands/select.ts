import { existingIds, subjectsOf } from '../subject/subject';
import type { EditorState } from '../types';

/** Chooses these things and no others; ids that the plan does not have are left out. */
export function select(state: EditorState, ids: readonly string[]): EditorState {
  const selection = existingIds(state.history.present, [...new Set(ids)]);
  return { ...state, selection, handle: null };
}

/** Chooses everything that stands in the room. The walls stay where they are. */
export function selectAll(state: EditorState): EditorState {
  const all = [...subjectsOf(state.history.present).values()];
  return select(
    state,
    all.filter(({ kind }) => kind !== 'corner' && kind !== 'opening' && kind !== 'fitting').map(({ id }) => id),
  );
}

/** Puts the message away. */
export function dismissMessage(state: EditorState): EditorState {
  return state.message === null ? state : { ...state, message: null };
}

/** Says something, once. */
export function refuse(state: EditorState, text: string): EditorState {
  return { ...state, message: { tone: 'refused', text } };
}
