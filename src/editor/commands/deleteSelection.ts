import { type Recipe, removeCorner, removeItems, removeLeg, removeRunPoint } from '../../plan';
import { nounOf } from '../lists/names';
import { findSubject } from '../subject/subject';
import type { EditorState } from '../types';
import { change } from './moveSelection';
import { refuse } from './select';

/** Removes what is chosen; with a chosen handle, the corner, point or leg that it stands for, unless that is the last of its kind. */
export function deleteSelection(state: EditorState): EditorState {
  const { history, selection, handle } = state;
  const [id] = selection;
  if (id === undefined) return state;
  const part = handle === null ? null : removePart(id, handle);
  const after = part === null ? state : change(state, part.label, part.recipe);
  if (after !== state) return { ...after, handle: null };
  const plan = history.present;
  const ids = selection.filter((each) => findSubject(plan, each)?.kind !== 'corner');
  if (ids.length === 0) return refuse(state, 'A wall can’t be removed. Choose one of its corners, or drag a corner onto the next.');
  const label = ids.length === 1 ? `Remove ${nounOf(plan, ids[0] ?? '')}` : `Remove ${ids.length} things`;
  return change(state, label, removeItems(ids));
}

function removePart(id: string, handle: string): { label: string; recipe: Recipe } | null {
  const [word = '', number = ''] = handle.split(/-(?=\d+$)/);
  if (handle.startsWith('corner-')) return { label: 'Remove corner', recipe: removeCorner(handle.slice('corner-'.length)) };
  if (word === 'point') return { label: 'Remove point of duct run', recipe: removeRunPoint(id, Number(number)) };
  return word === 'leg' ? { label: 'Remove leg of table', recipe: removeLeg(id, Number(number)) } : null;
}
