import { edit, findPlanProblems, type Recipe } from '../../plan';
import type { EditorState, Guide, PointerInput, Preview, Readout } from '../types';
import { commitPreview } from './commitPreview';
import type { Step } from './tool';
import type { ToolState } from './toolState';

/** Something that would be added where the pointer is. */
export interface Ghost {
  readonly label: string;
  readonly recipe: Recipe;
  /** What to choose once it is there. */
  readonly ids: readonly string[];
  readonly guides?: readonly Guide[];
  readonly readouts?: readonly Readout[];
}

/** Shows a ghost; nothing where there is none or the plan would be unsound with it. */
export function showGhost(editor: EditorState, ghost: Ghost | null): Preview | null {
  if (ghost === null) return null;
  const transaction = edit(editor.history.present, ghost.label, ghost.recipe);
  if (findPlanProblems(transaction.plan).length > 0) return null;
  return { plan: transaction.plan, transaction, guides: ghost.guides ?? [], readouts: ghost.readouts ?? [], box: null };
}

/** Keeps a ghost and chooses it. With shift the tool stays in hand for another, else the choosing tool comes back. */
export function keepGhost(editor: EditorState, ghost: Ghost | null, tool: ToolState, event: PointerInput): Step {
  const preview = showGhost(editor, ghost);
  if (preview === null || ghost === null) return { tool, preview: null };
  const after = event.shift ? tool : CHOOSE;
  return commitPreview({ ...editor, preview }, after, { selection: ghost.ids, handle: null });
}

/** The tool that is in hand when nothing else is. */
export const CHOOSE: ToolState = { tool: 'select', name: 'idle', last: null };
