import {
  applyRepair,
  chooseTool,
  commit,
  type EditorEvent,
  type EditorState,
  type FieldPath,
  type FieldValue,
  handle,
  openPlan,
  select,
  setField,
  setFieldText,
  type ToolChoice,
} from '../../editor';
import type { Plan, Transaction } from '../../plan';
import type { Finding, Repair } from '../../rules';
import { fitWhole, keepWhole } from './fitWhole';
import { type AppState, readState, update } from './store';

/** A command of the editor: a transaction to commit and what to choose after it, or why not. */
export type Outcome = { ok: true; transaction: Transaction; select?: readonly string[] } | { ok: false; problem: string };

/** Everything that a press in the page can do. Each is one change of the store. */
export const acts = {
  editor: (change: (editor: EditorState) => EditorState) => update((s) => ({ editor: change(s.editor) })),

  event: (event: EditorEvent) => acts.editor((editor) => keepWhole(editor, handle(editor, event))),

  tool: (choice: ToolChoice) => acts.editor((editor) => chooseTool(editor, choice)),

  select: (ids: readonly string[]) => update((s) => ({ editor: select(s.editor, ids), finding: null, tab: 'card' })),

  /** Chooses a finding and what it is about; null lets go of it. */
  chooseFinding: (finding: Finding | null) =>
    update((s) => (finding ? { finding: finding.id, editor: select(s.editor, finding.subjects.slice(0, 1)) } : { finding: null })),

  applyRepair: (finding: Finding, repair: Repair) => acts.outcome((plan) => applyRepair(plan, finding, repair)),

  /** Carries out a command on the present plan; a refusal is said and changes nothing. */
  outcome: (command: (plan: Plan) => Outcome) => {
    const { editor } = readState();
    const result = command(editor.history.present);
    if (!result.ok) return acts.say('refused', result.problem);
    const next = commit(editor, result.transaction);
    update({ editor: result.select ? select(next, result.select) : next });
  },

  /** Types into a field. Returns the reason when the text is refused; the value then stays. */
  type: (path: FieldPath, text: string): string | null => {
    const { editor } = readState();
    const plan = editor.history.present;
    const result = setFieldText(plan, path, text, plan.settings.units);
    if (!result.ok) return result.problem;
    update({ editor: commit(editor, result.transaction) });
    return null;
  },

  setField: (path: FieldPath, value: FieldValue): string | null => {
    const { editor } = readState();
    const result = setField(editor.history.present, path, value);
    if (!result.ok) return result.problem;
    update({ editor: commit(editor, result.transaction) });
    return null;
  },

  /** Opens a plan in place of the present one. Work that was changed is put aside, not lost. */
  open: (plan: Plan, fileName: string | null) =>
    update((s) => ({ ...OPENED, editor: fitWhole(openPlan(s.editor, plan)), left: leaveWork(s), fileName })),

  /** Takes up again what was put aside when another plan was opened. */
  takeUpLeft: () =>
    update((s) =>
      s.left
        ? { ...OPENED, editor: fitWhole({ ...s.left, viewport: s.editor.viewport }), left: leaveWork({ ...s, left: null }), fileName: null }
        : {},
    ),

  say: (tone: 'note' | 'refused', text: string) => update((s) => ({ editor: { ...s.editor, message: { tone, text } } })),
};

const OPENED = { page: 'work', finding: null, tab: 'card', typing: null } as const;

const leaveWork = ({ editor, left }: Pick<AppState, 'editor' | 'left'>) => (editor.history.past.length > 0 ? editor : left);
