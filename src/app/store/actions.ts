import {
  applyRepair,
  type CommandResult,
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
import type { Plan } from '../../plan';
import type { Finding, Repair } from '../../rules';
import { fitWhole, keepWhole } from './fitWhole';
import { type AppState, readState, update } from './store';

/** Everything that a press in the page can do. Each is one change of the store. */
export const actions = {
  editor: (change: (editor: EditorState) => EditorState) => update((s) => ({ editor: change(s.editor) })),

  event: (event: EditorEvent) => actions.editor((editor) => keepWhole(editor, handle(editor, event))),

  tool: (choice: ToolChoice) => actions.editor((editor) => chooseTool(editor, choice)),

  select: (ids: readonly string[]) => update((s) => ({ editor: select(s.editor, ids), finding: null, tab: 'card' })),

  /** Chooses a finding and what it is about; null lets go of it. */
  chooseFinding: (finding: Finding | null) =>
    update((s) => (finding ? { finding: finding.id, editor: select(s.editor, finding.subjects.slice(0, 1)) } : { finding: null })),

  applyRepair: (finding: Finding, repair: Repair) => actions.run((plan) => applyRepair(plan, finding, repair)),

  /** Carries out a command on the present plan; a refusal is shown and changes nothing. */
  run: (command: (plan: Plan) => CommandResult) => {
    const { editor } = readState();
    const result = command(editor.history.present);
    if (!result.ok) return actions.showMessage('refused', result.problem);
    const next = commit(editor, result.transaction);
    update({ editor: result.select ? select(next, result.select) : next });
  },

  /** Types into a field. Returns the reason when the text is refused; the value then stays. */
  setFieldText: (path: FieldPath, text: string): string | null => {
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

  /** Opens a plan in place of the present one. Work that was changed is parked, not lost. */
  open: (plan: Plan, fileName: string | null) =>
    update((s) => ({ ...OPENED, editor: fitWhole(openPlan(s.editor, plan)), parkedPlan: parkPlan(s), fileName })),

  /** Goes back to the plan that was parked when another one was opened. */
  resume: () =>
    update((s) => {
      if (s.parkedPlan === null) return {};
      const editor = fitWhole({ ...s.parkedPlan, viewport: s.editor.viewport });
      return { ...OPENED, editor, parkedPlan: parkPlan({ ...s, parkedPlan: null }), fileName: null };
    }),

  showMessage: (tone: 'note' | 'refused', text: string) => update((s) => ({ editor: { ...s.editor, message: { tone, text } } })),
};

const OPENED = { page: 'work', finding: null, tab: 'card', typing: null } as const;

/** Only work that was changed is worth going back to. */
const parkPlan = ({ editor, parkedPlan }: Pick<AppState, 'editor' | 'parkedPlan'>) =>
  editor.history.past.length > 0 ? editor : parkedPlan;
