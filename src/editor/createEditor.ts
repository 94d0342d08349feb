import { createHistory, type Plan } from '../plan';
import type { EditorState, Viewport } from './types';
import { fitPlan } from './view/fitPlan';

/** An editor with this plan, nothing chosen, the whole plan in sight. */
export function createEditor(plan: Plan, viewport: Viewport): EditorState {
  return fitPlan({
    history: createHistory(plan),
    selection: [],
    handle: null,
    tool: { tool: 'select', name: 'idle', last: null },
    view: { scale: 0.1, dx: 0, dy: 0 },
    viewport,
    panning: null,
    hover: null,
    hoverHandle: null,
    preview: null,
    clipboard: null,
    message: null,
  });
}

/** Opens another plan in place of the present one; what was copied can still be pasted. */
export function openPlan(state: EditorState, plan: Plan): EditorState {
  return { ...createEditor(plan, state.viewport), clipboard: state.clipboard };
}

/** What the canvas draws: the plan as it would be after the gesture in progress, or as it is. */
export function shownPlan(state: EditorState): Plan {
  return state.preview?.plan ?? state.history.present;
}
