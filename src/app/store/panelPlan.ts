import { useSyncExternalStore } from 'react';
import { shownPlan } from '../../editor';
import type { Plan } from '../../plan';
import { readState, subscribe } from './store';

/** How long the panels may lag behind the hand, ms. */
const LAG_MS = 500;

let plan = shownPlan(readState().editor);
let timer: ReturnType<typeof setTimeout> | undefined;
const listeners = new Set<() => void>();

// Before any component listens, so that a panel never shows an older plan than what is chosen in it.
subscribe(() => {
  const { editor } = readState();
  if (shownPlan(editor) === plan) return;
  if (editor.preview === null) follow();
  else timer ??= setTimeout(follow, LAG_MS);
});

function follow(): void {
  clearTimeout(timer);
  timer = undefined;
  plan = shownPlan(readState().editor);
  for (const listener of listeners) listener();
}

/**
 * The plan that the panels show: the shown one, but while something is dragged it follows twice a second,
 * so that the canvas keeps up with the hand.
 */
export function usePanelPlan(): Plan {
  return useSyncExternalStore(listen, () => plan);
}

function listen(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
