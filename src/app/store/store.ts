import { useSyncExternalStore } from 'react';
import { createEditor, type EditorState } from '../../editor';
import { createPlan } from '../../plan';

/** Which of the checks have been fetched: none, those of the line and its room, all; until then nothing is said of what the others look at. */
export type LoadedChecks = 'none' | 'line' | 'all' | 'failed';

/** What the page holds beside the editor: which pane is open, which finding is chosen. Plain data. */
export interface AppState {
  editor: EditorState;
  /** The page that is shown. */
  page: 'start' | 'work';
  pane: 'image' | 'manual' | null;
  /** The open entry of the manual. */
  entry: string | null;
  /** Id of the chosen finding; its place is lit on the plan. */
  finding: string | null;
  loadedChecks: LoadedChecks;
  tab: 'card' | 'list';
  isElevationOpen: boolean;
  theme: 'day' | 'night';
  /** Name of the file that the plan came from or went to. */
  fileName: string | null;
  /** The plan that was changed and then parked for another one, with all that can be undone in it. */
  parkedPlan: EditorState | null;
  /** A dimension on the canvas that is being typed into. */
  typing: { path: readonly (string | number)[]; text: string; x: number; y: number } | null;
}

const INITIAL_VIEWPORT = { width: 1000, height: 600 };

let state: AppState = {
  editor: createEditor(createPlan(), INITIAL_VIEWPORT),
  page: 'work',
  pane: null,
  entry: null,
  finding: null,
  loadedChecks: 'none',
  tab: 'card',
  isElevationOpen: true,
  theme: 'day',
  fileName: null,
  parkedPlan: null,
  typing: null,
};

const listeners = new Set<() => void>();

export const readState = (): AppState => state;

/** Changes part of the state; listeners hear of it only when something is really new. */
export function update(change: Partial<AppState> | ((before: AppState) => Partial<AppState>)): void {
  const part = typeof change === 'function' ? change(state) : change;
  const next = { ...state, ...part };
  const isSame = (Object.keys(part) as (keyof AppState)[]).every((key) => Object.is(state[key], next[key]));
  if (isSame) return;
  state = next;
  for (const listener of listeners) listener();
}

export function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The part of the state that `pick` takes; the component renders again only when that part changes. */
export function useApp<T>(pick: (state: AppState) => T): T {
  return useSyncExternalStore(subscribe, () => pick(state));
}
