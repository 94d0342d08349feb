import { useId, useState } from 'react';
import { commit, formatPlateRecord, setPlateRecordText } from '../../editor';
import { readState, update, useApp } from '../store/store';

/** What a plate's own thermometer showed over one cycle: typed or pasted as lines, kept as one change of the plan. */
export function PlateRecord({ machine, label }: { machine: string; label: string }) {
  const id = useId();
  const units = useApp((s) => s.editor.history.present.settings.units);
  const record = useApp((s) => s.editor.history.present.machines.find((m) => m.id === machine)?.hookUp.plateRecord);
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  if (!record) return null;
  const shown = formatPlateRecord(record, units);
  const settle = (text: string | null, reason: string | null) => {
    setTyped(text);
    setProblem(reason);
  };
  const keep = () => {
    if (typed === null) return;
    const reason = keepRecord(machine, typed);
    settle(reason === null ? null : typed, reason);
  };
  return (
    <div className="plate-record">
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        rows={6}
        spellCheck={false}
        autoComplete="off"
        value={typed ?? shown}
        placeholder={EXAMPLES[units]}
        aria-invalid={problem !== null}
        aria-describedby={`${id}-help`}
        onChange={(e) => settle(e.target.value, null)}
        onKeyDown={(e) => {
          if (e.key === 'Enter' && (e.ctrlKey || e.metaKey)) keep();
          if (e.key === 'Escape') settle(null, null);
          e.stopPropagation();
        }}
      />
      {problem && (
        <span className="problem" role="alert">
          {problem}
        </span>
      )}
      <p id={`${id}-help`} className="quiet">
        One reading a line: seconds, {units === 'us' ? '°F' : '°C'}. A table can be pasted.
      </p>
      <div className="actions">
        <button type="button" className="press" disabled={typed === null || typed === shown} onClick={keep}>
          Keep the record
        </button>
        {typed !== null && (
          <button type="button" className="press" data-kind="bare" onClick={() => settle(null, null)}>
            As it was
          </button>
        )}
      </div>
    </div>
  );
}

/** Keeps the text as the machine's record. Returns the reason when it is refused. */
function keepRecord(machine: string, text: string): string | null {
  const { editor } = readState();
  const plan = editor.history.present;
  const result = setPlateRecordText(plan, machine, text, plan.settings.units);
  if (!result.ok) return result.problem;
  update({ editor: commit(editor, result.transaction) });
  return null;
}

const EXAMPLES = { us: '0, 95\n15, 148\n45, 161', metric: '0, 35\n15, 64\n45, 72' } as const;
