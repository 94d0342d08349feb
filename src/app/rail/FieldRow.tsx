import { useEffect, useId, useRef, useState } from 'react';
import { type Field, formatField } from '../../editor';
import type { Units } from '../../units';
import { actions } from '../store/actions';
import { useApp } from '../store/store';

/** One property of what is chosen: typed as people type, refused with the reason beneath it. */
export function FieldRow({ field, isAsked = false }: { field: Field; isAsked?: boolean }) {
  const id = useId();
  const units = useApp((s) => s.editor.history.present.settings.units);
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <div className="row" data-asked={isAsked || field.value === null} data-wide={isWide(field, units)} title={field.help}>
      <label htmlFor={id}>{field.label}</label>
      <FieldInput field={field} id={id} problem={problem} report={setProblem} isAsked={isAsked} />
      <Problem id={id} text={problem} />
    </div>
  );
}

/** Longest words of a choice, and longest text, that stand beside their label; longer ones get a line of their own. */
const BESIDE = 14;
const TEXT_BESIDE = 16;

const isWide = (field: Field, units: Units) =>
  field.kind === 'choice'
    ? field.options.some((option) => option.label.length > BESIDE)
    : field.kind !== 'toggle' && formatField(field, units).length > TEXT_BESIDE;

/** Why a text was refused; brought into sight, since the field may stand at the edge of what is scrolled. */
export function Problem({ id, text }: { id: string; text: string | null }) {
  const line = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    if (text !== null) line.current?.scrollIntoView({ block: 'nearest' });
  }, [text]);
  if (text === null) return null;
  return (
    <span ref={line} className="problem" id={`${id}-problem`} role="alert">
      {text}
    </span>
  );
}

interface InputProps {
  field: Field;
  id: string;
  problem: string | null;
  report: (problem: string | null) => void;
}

function FieldInput({ field, id, problem, report, isAsked }: InputProps & { isAsked: boolean }) {
  if (field.kind === 'toggle' && isAsked) return <YesOrNo field={field} id={id} report={report} />;
  if (field.kind === 'toggle' && !field.nullable) {
    return (
      <input
        id={id}
        type="checkbox"
        checked={field.value === true}
        onChange={(e) => report(actions.setField(field.path, e.target.checked))}
      />
    );
  }
  if (field.kind === 'choice' || field.kind === 'toggle') return <Choice field={field} id={id} report={report} isAsked={isAsked} />;
  return <TextInput field={field} id={id} problem={problem} report={report} />;
}

/** A question that is answered with one press. */
function YesOrNo({ field, id, report }: Omit<InputProps, 'problem'>) {
  return (
    <span className="yes-no" role="group" id={id} aria-label={field.label}>
      {field.options.map(({ value, label }) => (
        <button key={label} type="button" className="press" onClick={() => report(actions.setField(field.path, value))}>
          {label}
        </button>
      ))}
    </span>
  );
}

/**
 * A choice. Asked for, it goes once it is answered: so one that is walked with the arrow keys is kept only with Enter or on
 * leaving it, not at the first arrow.
 */
function Choice({ field, id, report, isAsked }: Omit<InputProps, 'problem'> & { isAsked: boolean }) {
  const options = field.nullable ? [{ value: null, label: 'not known' }, ...field.options.filter((o) => o.value !== null)] : field.options;
  const at = options.findIndex((option) => option.value === field.value);
  const isWalked = useRef(false);
  const [picked, setPicked] = useState<number | null>(null);
  const keep = (index: number | null) => {
    setPicked(null);
    if (index !== null && index !== at) report(actions.setField(field.path, options[index]?.value ?? null));
  };
  return (
    <select
      id={id}
      value={picked ?? at}
      onPointerDown={() => {
        isWalked.current = false;
      }}
      onKeyDown={(e) => {
        isWalked.current = isAsked;
        if (e.key === 'Enter' && picked !== null) keep(picked);
      }}
      onBlur={() => keep(picked)}
      onChange={(e) => (isWalked.current ? setPicked : keep)(Number(e.target.value))}
    >
      {options.map((option, index) => (
        <option key={String(option.value)} value={index}>
          {option.label}
        </option>
      ))}
    </select>
  );
}

/** Shows the value; while typed into, the text is the person's own until Enter or leaving the field. */
export function TextInput({ field, id, problem, report, className }: InputProps & { className?: string }) {
  const units = useApp((s) => s.editor.history.present.settings.units);
  const shown = formatField(field, units);
  const [typed, setTyped] = useState<string | null>(null);
  const settle = () => {
    if (typed === null) return;
    const reason = typed === shown ? null : actions.setFieldText(field.path, typed);
    report(reason);
    if (reason === null) setTyped(null);
  };
  return (
    <input
      id={id}
      className={className}
      type="text"
      autoComplete="off"
      spellCheck={false}
      value={typed ?? shown}
      placeholder={field.nullable ? 'not known' : ''}
      aria-invalid={problem !== null}
      aria-describedby={problem === null ? undefined : `${id}-problem`}
      aria-label={className ? field.label : undefined}
      onFocus={(e) => e.target.select()}
      onChange={(e) => setTyped(e.target.value)}
      onBlur={settle}
      onKeyDown={(e) => {
        if (e.key === 'Enter') settle();
        if (e.key === 'Escape') {
          setTyped(null);
          report(null);
        }
        e.stopPropagation();
      }}
    />
  );
}
