import { useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { actions } from '../store/actions';
import { type AppState, readState, update, useApp } from '../store/store';

/** A dimension of the canvas, pressed and now typed into, in its place. */
export function InlineField() {
  const typing = useApp((s) => s.typing);
  return typing && <Input key={typing.path.join('.')} typing={typing} />;
}

const close = () => update({ typing: null });

function Input({ typing }: { typing: NonNullable<AppState['typing']> }) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [text, setText] = useState(typing.text);
  const [problem, setProblem] = useState<string | null>(null);
  useFocusFromPress(field);
  useCloseWhenPaperMoves();
  const settle = () => {
    const reason = text === typing.text ? null : actions.setFieldText(typing.path, text);
    setProblem(reason);
    if (reason === null) close();
  };
  return (
    <div className="inline-field" style={{ left: typing.x, top: typing.y }}>
      <input
        ref={field}
        value={text}
        autoComplete="off"
        spellCheck={false}
        aria-label="Length"
        aria-invalid={problem !== null}
        aria-describedby={problem === null ? undefined : id}
        onChange={(e) => setText(e.target.value)}
        // Closing takes the focus away as well, and must keep nothing.
        onBlur={() => readState().typing === typing && (problem ? close() : settle())}
        onKeyDown={(e) => {
          e.stopPropagation();
          if (e.key === 'Enter') settle();
          if (e.key === 'Escape') close();
        }}
      />
      {problem && (
        <span id={id} className="problem" role="alert">
          {problem}
        </span>
      )}
    </div>
  );
}

/**
 * Takes the focus, and gives it back to the paper at the end. The field is there before the press that opened it
 * is over; what the browser does last with a press is to focus the paper, so that is held off once.
 */
function useFocusFromPress(field: React.RefObject<HTMLInputElement | null>) {
  useLayoutEffect(() => {
    const input = field.current;
    const before = document.activeElement instanceof HTMLElement ? document.activeElement : null;
    input?.focus();
    input?.select();
    const hold = (e: MouseEvent) => e.preventDefault();
    window.addEventListener('mousedown', hold, { capture: true, once: true });
    return () => {
      window.removeEventListener('mousedown', hold, { capture: true });
      if (document.activeElement === input) before?.focus({ preventScroll: true });
    };
  }, [field]);
}

/** The dimension slides away below the field when the paper is moved or enlarged. */
function useCloseWhenPaperMoves() {
  const view = useApp((s) => s.editor.view);
  const first = useRef(readState().editor.view);
  useEffect(() => {
    if (view !== first.current) close();
  }, [view]);
}
