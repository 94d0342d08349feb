import { useState } from 'react';
import { acts } from '../store/acts';
import { type AppState, update, useApp } from '../store/store';

/** A dimension of the canvas, pressed and now typed into, in its place. */
export function InlineField() {
  const typing = useApp((s) => s.typing);
  return typing && <Input key={typing.path.join('.')} typing={typing} />;
}

function Input({ typing }: { typing: NonNullable<AppState['typing']> }) {
  const [text, setText] = useState(typing.text);
  const [problem, setProblem] = useState<string | null>(null);
  const settle = () => {
    const reason = text === typing.text ? null : acts.type(typing.path, text);
    if (reason === null) update({ typing: null });
    else setProblem(reason);
  };
  return (
    <input
      className="inline-field"
      style={{ left: typing.x, top: typing.y }}
      // It was opened by a press on the dimension itself.
      autoFocus
      value={text}
      aria-label="Length"
      aria-invalid={problem !== null}
      title={problem ?? undefined}
      onFocus={(e) => e.target.select()}
      onChange={(e) => setText(e.target.value)}
      onBlur={() => (problem ? update({ typing: null }) : settle())}
      onKeyDown={(e) => {
        e.stopPropagation();
        if (e.key === 'Enter') settle();
        if (e.key === 'Escape') update({ typing: null });
      }}
    />
  );
}
