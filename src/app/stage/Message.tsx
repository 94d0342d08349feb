import { X } from 'lucide-react';
import { useEffect } from 'react';
import { dismissMessage } from '../../editor';
import { actions } from '../store/actions';
import { type AppState, useApp } from '../store/store';

const NOTE_MS = 5000;

type Place = 'work' | 'start' | 'image' | 'manual';

/** Something to say once, on whatever lies on top. A note goes by itself; a refusal stays until it is put away. */
export function Message({ on = 'work' }: { on?: Place }) {
  const said = useApp((s) => s.editor.message);
  const message = useApp(topOf) === on ? said : null;
  useEffect(() => {
    if (message?.tone !== 'note') return;
    const timer = setTimeout(() => actions.editor(dismissMessage), NOTE_MS);
    return () => clearTimeout(timer);
  }, [message]);
  if (!message) return null;
  return (
    <div className="message" data-tone={message.tone} role={message.tone === 'refused' ? 'alert' : 'status'}>
      <span>{message.text}</span>
      <button type="button" className="press" data-kind="bare" aria-label="Put away" onClick={() => actions.editor(dismissMessage)}>
        <X size={16} />
      </button>
    </div>
  );
}

/** What lies on top of the page. */
const topOf = ({ page, pane }: AppState): Place => pane ?? page;
