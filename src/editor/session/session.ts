import { describeProblem, parsePlan, renderPlanText } from '../../plan';
import { createEditor } from '../createEditor';
import { existingIds } from '../subject/subject';
import type { EditorState, View, Viewport } from '../types';
import { MAX_SCALE, MIN_SCALE } from '../view/view';

/** Format of what the browser keeps, so that an older page's work is recognised. */
const SESSION_FORMAT = 'rackway-session-1';

export type RestoreResult = { readonly ok: true; readonly state: EditorState } | { readonly ok: false; readonly problem: string };

/** The plan, what is chosen and the view, as text for the browser to keep. The history is not kept. */
export function serializeSession({ history, selection, view, viewport }: EditorState): string {
  return JSON.stringify({ format: SESSION_FORMAT, plan: renderPlanText(history.present), selection, view, viewport });
}

/** Takes up kept work. The plan is read as strictly as a file; a view or a choice that can't be read is left out. */
export function restoreSession(text: string, viewport: Viewport): RestoreResult {
  const kept = parseObject(text);
  if (kept === null || kept['format'] !== SESSION_FORMAT || typeof kept['plan'] !== 'string') {
    return { ok: false, problem: 'It is not a session of this program.' };
  }
  const read = parsePlan(kept['plan']);
  if (!read.ok) return { ok: false, problem: `${describeProblem(read.problem)}.` };
  const state = createEditor(read.plan, viewport);
  const view = readView(kept['view'], kept['viewport'], viewport);
  const ids = Array.isArray(kept['selection']) ? kept['selection'].filter((id) => typeof id === 'string') : [];
  return { ok: true, state: { ...state, view: view ?? state.view, selection: existingIds(read.plan, ids) } };
}

function parseObject(text: string): Record<string, unknown> | null {
  try {
    const value: unknown = JSON.parse(text);
    return isObject(value) ? value : null;
  } catch {
    return null;
  }
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/** The kept view, its middle kept on a canvas of another size. */
function readView(view: unknown, kept: unknown, viewport: Viewport): View | null {
  if (!isObject(view) || !isObject(kept)) return null;
  const numbers = [view['scale'], view['dx'], view['dy'], kept['width'], kept['height']];
  if (!numbers.every((value) => typeof value === 'number' && Number.isFinite(value))) return null;
  const [scale = 0, dx = 0, dy = 0, width = 0, height = 0] = numbers as number[];
  if (scale < MIN_SCALE || scale > MAX_SCALE) return null;
  return { scale, dx: dx + (viewport.width - width) / 2, dy: dy + (viewport.height - height) / 2 };
}
