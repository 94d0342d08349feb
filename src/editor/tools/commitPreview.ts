import { type PlanProblem, validatePlan } from '../../plan';
import { capitalize } from '../lists/names';
import type { EditorState, Preview } from '../types';
import type { Step } from './tool';
import type { ToolState } from './toolState';

/** Ends a gesture: keeps what the preview shows, where it is a sound plan; a refusal says why and changes nothing. */
export function commitPreview({ preview }: EditorState, tool: ToolState, after: Step = {}): Step {
  const transaction = preview?.transaction ?? null;
  if (transaction === null || transaction.patches.length === 0) return { ...after, tool, preview: null };
  const problem = validatePlan(transaction.plan);
  if (problem !== null) return { tool, preview: null, message: { tone: 'refused', text: problemText(problem) } };
  return { ...after, tool, preview: null, commit: transaction };
}

/** A refusal in one sentence. */
export function problemText({ reason }: Pick<PlanProblem, 'reason'>): string {
  return `${capitalize(reason)}.`;
}

/** A preview that shows no change of the plan. */
export function plainPreview(state: EditorState, shown: Partial<Omit<Preview, 'plan' | 'transaction'>>): Preview {
  return { plan: state.history.present, transaction: null, guides: [], readouts: [], box: null, ...shown };
}
