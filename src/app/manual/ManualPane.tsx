import { X } from 'lucide-react';
import { useEffect, useMemo, useRef, useState } from 'react';
import { CHAPTERS, createManual, MANUAL_KINDS, type ManualEntry, searchManual } from '../../manual';
import { capital } from '../parts/capital';
import { Message } from '../stage/Message';
import { update, useApp } from '../store/store';
import { useFormat } from '../store/work';
import { EntryText } from './EntryText';

import '../styles/manual.css';

/** The manual: what every check, figure, formula, limit and rule says of itself, found by its words, one entry at a time. */
export function ManualPane() {
  const dialog = useRef<HTMLDialogElement>(null);
  const format = useFormat();
  const entries = useMemo(() => createManual(format), [format]);
  const [query, setQuery] = useState('');
  const chosen = useApp((s) => s.entry);
  const found = searchManual(entries, query);
  const entry = entries.find(({ id }) => id === chosen) ?? null;
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="pane manual-pane" aria-labelledby="manual-title" onClose={() => update({ pane: null, entry: null })}>
      <div className="inside">
        <div className="top">
          <h2 id="manual-title">Manual</h2>
          <input
            type="search"
            aria-label="Search the manual"
            placeholder="Search"
            autoComplete="off"
            spellCheck={false}
            value={query}
            onChange={(e) => setQuery(e.target.value)}
            onKeyDown={(e) => {
              const [first] = found;
              if (e.key === 'Enter' && first) open(first.id);
            }}
          />
          <span role="status" className="quiet">
            {found.length === 1 ? '1 entry' : `${found.length} entries`}
          </span>
          <button type="button" className="press" data-kind="bare" aria-label="Close" onClick={() => dialog.current?.close()}>
            <X size={16} />
          </button>
        </div>
        <div className="body">
          <Contents found={found} chosen={entry} isSearch={query.trim() !== ''} />
          <Page entry={entry} entries={entries} />
        </div>
      </div>
      <Message on="manual" />
    </dialog>
  );
}

const open = (id: string) => update({ entry: id });

/** What was found, by chapter and group. Without a search the chapters are folded, but for that of the chosen entry. */
function Contents({ found, chosen, isSearch }: { found: readonly ManualEntry[]; chosen: ManualEntry | null; isSearch: boolean }) {
  return (
    <nav aria-label="Contents">
      {MANUAL_KINDS.map((kind) => {
        const own = found.filter((entry) => entry.kind === kind);
        if (own.length === 0) return null;
        return (
          <details key={`${kind} ${isSearch}`} className="chapter" open={isSearch || (chosen?.kind ?? 'check') === kind}>
            <summary>
              {CHAPTERS[kind]} <span>{own.length}</span>
            </summary>
            {[...new Set(own.map(({ group }) => group))].map((group) => (
              <section key={group}>
                <h3>{capital(group)}</h3>
                <ul>
                  {own
                    .filter((entry) => entry.group === group)
                    .map((entry) => (
                      <li key={entry.id}>
                        <EntryPress entry={entry} isChosen={entry === chosen} />
                      </li>
                    ))}
                </ul>
              </section>
            ))}
          </details>
        );
      })}
      {found.length === 0 && <p className="quiet">Nothing in the manual has these words.</p>}
    </nav>
  );
}

function EntryPress({ entry, isChosen }: { entry: ManualEntry; isChosen: boolean }) {
  const press = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (isChosen) press.current?.scrollIntoView({ block: 'center' });
  }, [isChosen]);
  return (
    <button ref={press} type="button" aria-current={isChosen ? 'page' : undefined} onClick={() => open(entry.id)}>
      {entry.title}
    </button>
  );
}

function Page({ entry, entries }: { entry: ManualEntry | null; entries: readonly ManualEntry[] }) {
  const page = useRef<HTMLElement>(null);
  const id = entry?.id;
  useEffect(() => page.current?.scrollTo({ top: 0 }), [id]);
  return (
    <article ref={page} className="page" tabIndex={0} aria-label={entry?.title ?? 'Manual'} data-entry={id}>
      {entry ? (
        <EntryText entry={entry} entries={entries} open={open} />
      ) : (
        <p className="quiet">
          Made from what the program itself holds: each check with its reason, its limit and where that comes from; each formula with the
          range it holds for and its worked examples. Choose an entry, or search.
        </p>
      )}
      <p className="caution">Preliminary. The machine’s own plate, local code and licensed trades decide.</p>
    </article>
  );
}
