import { restoreSession, serializeSession } from '../../editor';
import { actions } from './actions';
import { readState, subscribe, update } from './store';

const KEY = 'rackway-session';
const DELAY_MS = 300;

/** Takes up the session that the browser kept. False when there is none, or when it can't be read (it is then set aside, not lost). */
export function restoreWork(): boolean {
  const text = readStorage(KEY);
  if (text === null) return false;
  const result = restoreSession(text, readState().editor.viewport);
  if (result.ok) {
    update({ editor: result.state });
    return true;
  }
  writeStorage(`${KEY}-set-aside`, text);
  actions.showMessage('refused', `The work kept in this browser can’t be read: ${result.problem} It was set aside.`);
  return false;
}

/** Keeps the session in the browser now. False when the browser keeps nothing. */
export const saveNow = (): boolean => writeStorage(KEY, serializeSession(readState().editor));

/** Keeps the session in the browser after each change of the plan, the view or the selection. */
export function startAutosave(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let kept = readState().editor;
  const save = () => {
    clearTimeout(timer);
    timer = undefined;
    const { editor } = readState();
    if (editor.history === kept.history && editor.view === kept.view) return;
    kept = editor;
    if (!writeStorage(KEY, serializeSession(editor)))
      actions.showMessage('refused', 'This browser keeps nothing for this page. Save the plan as a file.');
  };
  subscribe(() => {
    timer ??= setTimeout(save, DELAY_MS);
  });
  // A page that is closed or hidden is saved at once.
  window.addEventListener('pagehide', save);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && save());
}

function readStorage(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function writeStorage(key: string, text: string): boolean {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
