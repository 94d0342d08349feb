import { useId, useState } from 'react';
import type { Field } from '../../../editor';
import { actions } from '../../store/actions';
import { Problem } from '../FieldRow';

/** A sentence of a data sheet: kept with Enter or on leaving it, given up with Escape. */
export function LongText({ field }: { field: Field }) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const settle = () => {
    if (typed === null) return;
    const reason = typed === field.value ? null : actions.setFieldText(field.path, typed);
    setProblem(reason);
    if (reason === null) setTyped(null);
  };
  return (
    <div className="row" data-wide="true" title={field.help}>
      <label htmlFor={id} className={field.label === 'Step' ? 'sr-only' : undefined}>
        {field.label}
      </label>
      <textarea
        id={id}
        rows={2}
        spellCheck={false}
        value={typed ?? String(field.value)}
        aria-invalid={problem !== null}
        aria-describedby={problem === null ? undefined : `${id}-problem`}
        onChange={(e) => setTyped(e.target.value.replaceAll('\n', ' '))}
        onBlur={settle}
        onKeyDown={(e) => {
          if (e.key === 'Enter') {
            e.preventDefault();
            settle();
          }
          if (e.key === 'Escape') {
            setTyped(null);
            setProblem(null);
          }
          e.stopPropagation();
        }}
      />
      <Problem id={id} text={problem} />
    </div>
  );
}
