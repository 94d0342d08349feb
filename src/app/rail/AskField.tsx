import { fieldAt, toolForAsk } from '../../editor';
import type { Plan } from '../../plan';
import type { Ask } from '../../rules';
import { askWords } from '../../text';
import { formatterFor } from '../../units';
import { FetchedPart } from '../parts/FetchedPart';
import { actions } from '../store/actions';
import { readState } from '../store/store';
import { usePanelWork } from '../store/work';
import { FieldRow } from './FieldRow';

/** The one field that a finding or a figure asks for, right there; a thing that is not drawn yet is put on the paper from there; else the way to its card. */
export function AskField({ ask, label }: { ask: Ask; label?: string }) {
  const { scene } = usePanelWork();
  const { present } = readState().editor.history;
  const words = label ?? askWords(ask, formatterFor(present.settings.units));
  const field = fieldAt(present, scene, ask.path);
  if (ask.path.at(-1) === 'plateRecord')
    return (
      <FetchedPart fetch={fetchPlateRecord} close={nothing} props={{ machine: subjectAt(present, ask.path)[0] ?? '', label: words }} />
    );
  if (field) return <FieldRow field={label === undefined ? field : { ...field, label }} isAsked />;
  const tool = toolForAsk(ask);
  return (
    <div className="row">
      <span>{words}</span>
      <button type="button" className="press" onClick={() => (tool ? actions.tool(tool) : actions.select(subjectAt(present, ask.path)))}>
        {tool ? 'Put on paper' : 'Show where'}
      </button>
    </div>
  );
}

const fetchPlateRecord = async () => (await import('./PlateRecord')).PlateRecord;

const nothing = () => {};

/** The thing that a path of the plan leads into, for a data sheet its machine; nothing for what belongs to the plan as a whole. */
function subjectAt(plan: Plan, path: readonly (string | number)[]): string[] {
  let value: unknown = plan;
  let id: string | null = null;
  for (const key of path) {
    value = (value as Record<string | number, unknown> | null | undefined)?.[key];
    const own = (value as { id?: unknown } | null | undefined)?.id;
    if (typeof own === 'string') id = own;
  }
  if (path[0] === 'sheets') return plan.machines.flatMap((machine) => (machine.sheet === id ? [machine.id] : [])).slice(0, 1);
  return id === null ? [] : [id];
}
