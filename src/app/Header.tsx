import { BookOpen, Download, FolderOpen, Moon, Redo2, Sun, Undo2 } from 'lucide-react';
import { redo, undo } from '../editor';
import { Menu } from './parts/Menu';
import { actions } from './store/actions';
import { openFile, savePlan } from './store/files';
import { update, useApp } from './store/store';

/** The head: what is open, undo and redo, units, and the way out of the program. */
export function Header() {
  const title = useApp((s) => s.editor.history.present.title);
  const history = useApp((s) => s.editor.history);
  const units = useApp((s) => s.editor.history.present.settings.units);
  const theme = useApp((s) => s.theme);
  return (
    <header className="head">
      <Way />
      <h1>Rackway</h1>
      <button type="button" className="press to-plans" data-kind="bare" onClick={() => update({ page: 'start' })}>
        <FolderOpen size={16} /> Plans
      </button>
      <span className="what">
        <b>{title.project || 'Untitled dish room'}</b>
        {title.alternative && ` · ${title.alternative}`}
      </span>
      <button
        type="button"
        className="press"
        data-kind="bare"
        aria-label="Undo"
        title={undoTitle('Undo', history.past)}
        disabled={history.past.length === 0}
        onClick={() => actions.editor(undo)}
      >
        <Undo2 size={16} /> <span className="wide">Undo</span>
      </button>
      <button
        type="button"
        className="press"
        data-kind="bare"
        aria-label="Redo"
        title="Redo"
        disabled={history.future.length === 0}
        onClick={() => actions.editor(redo)}
      >
        <Redo2 size={16} /> <span className="wide">Redo</span>
      </button>
      <button
        type="button"
        className="press"
        data-kind="bare"
        title="Change the units that lengths are shown in"
        onClick={() => actions.setField(['settings', 'units'], units === 'us' ? 'metric' : 'us')}
      >
        {units === 'us' ? 'ft-in' : 'mm'}
      </button>
      <button
        type="button"
        className="press"
        data-kind="bare"
        aria-label={theme === 'day' ? 'Night paper' : 'Day paper'}
        title={theme === 'day' ? 'Night paper' : 'Day paper'}
        onClick={() => update({ theme: theme === 'day' ? 'night' : 'day' })}
      >
        {theme === 'day' ? <Moon size={16} /> : <Sun size={16} />}
      </button>
      <button
        type="button"
        className="press"
        data-kind="bare"
        aria-label="Manual"
        title="Manual"
        onClick={() => update({ pane: 'manual' })}
      >
        <BookOpen size={16} /> <span className="wide">Manual</span>
      </button>
      <Menu
        align="end"
        label={
          <>
            <Download size={16} /> Take away
          </>
        }
        title="Take away"
        groups={[
          {
            entries: [
              { label: 'Plan image, dimensioned…', run: () => update({ pane: 'image' }) },
              { label: 'Plan file', run: savePlan },
              { label: 'Open a plan file…', run: openFile },
            ],
          },
        ]}
      />
    </header>
  );
}

const undoTitle = (word: string, past: readonly { label: string }[]) => (past.length > 0 ? `${word}: ${past.at(-1)?.label}` : word);

/** The sign of the program: the way of a rack through the machine. */
function Way() {
  return (
    <svg className="way" viewBox="0 0 26 14" aria-hidden="true">
      <path d="M0 11h26" stroke="currentColor" strokeWidth="1.6" />
      <rect x="9" y="1" width="8" height="10" fill="currentColor" />
      <path d="M1.5 8.2h4.6M19.9 8.2h4.6" stroke="currentColor" strokeWidth="2.4" />
    </svg>
  );
}
