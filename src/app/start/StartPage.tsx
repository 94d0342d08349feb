import { FolderOpen, Undo2, X } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { FAMILIES } from '../../catalog';
import type { LineConfiguration } from '../../editor';
import { createLinePlan, createPlan } from '../../plan';
import type { Hand } from '../../scene';
import { Message } from '../stage/Message';
import { actions } from '../store/actions';
import { openFile } from '../store/files';
import { readState, update, useApp } from '../store/store';
import { ExampleRooms } from './ExampleRooms';

/** Where work begins: a room to look at, a line to begin with, a file. */
export function StartPage() {
  const page = useRef<HTMLElement>(null);
  useFocusWhileOpen(page);
  return (
    <main ref={page} className="start" tabIndex={-1} aria-label="Plans">
      <div className="sheet">
        <header className="masthead">
          <h1>Rackway</h1>
          <p>The way of a rack, from the drop-off to clean storage, while it is still a line on a drawing.</p>
          <button type="button" className="press" onClick={leave}>
            <X size={16} /> Back to the plan
          </button>
        </header>
        <h2>Rooms to look at</h2>
        <ExampleRooms />
        <h2>Begin with a line</h2>
        <NewLine />
        <h2>Or</h2>
        <div className="ways-in">
          <button type="button" className="press" onClick={() => actions.open(createPlan(), null)}>
            An empty room
          </button>
          <LeftWork />
          <button type="button" className="press" onClick={openFile}>
            <FolderOpen size={16} /> Open a plan file…
          </button>
        </div>
      </div>
      <Message on="start" />
    </main>
  );
}

/** Work that was put aside when another plan was opened. */
function LeftWork() {
  const title = useApp((s) => s.parkedPlan?.history.present.title);
  if (!title) return null;
  return (
    <button type="button" className="press" onClick={actions.resume}>
      <Undo2 size={16} /> Back to {title.project || 'the untitled dish room'} as you left it
    </button>
  );
}

const leave = () => update({ page: 'work' });

/** Takes the focus, and leaves with Escape; at the end it goes to the paper of a plan that was opened, else back to where the page was opened from. */
function useFocusWhileOpen(page: React.RefObject<HTMLElement | null>) {
  useEffect(() => {
    const { history } = readState().editor;
    page.current?.focus();
    const press = (e: KeyboardEvent) => e.key === 'Escape' && leave();
    window.addEventListener('keydown', press);
    return () => {
      window.removeEventListener('keydown', press);
      const isSame = readState().editor.history === history;
      document.querySelector<HTMLElement>(isSame ? '.to-plans' : '.surface')?.focus({ preventScroll: true });
    };
  }, [page]);
}

const CONFIGURATIONS: Record<LineConfiguration, string> = {
  straight: 'Straight through',
  'left-front': 'Corner, left and front',
  'right-front': 'Corner, right and front',
};
const HANDS: Record<Hand, string> = { 'left-to-right': 'Left to right', 'right-to-left': 'Right to left' };

function NewLine() {
  const [family, setFamily] = useState(FAMILIES[0]?.id ?? '');
  const [configuration, setConfiguration] = useState<LineConfiguration>('straight');
  const [hand, setHand] = useState<Hand>('left-to-right');
  return (
    <form
      className="new-line"
      onSubmit={(e) => {
        e.preventDefault();
        actions.open(createLinePlan({ family, configuration, hand }), null);
      }}
    >
      <Choice label="Machine family" value={family} choose={setFamily} options={FAMILIES.map((s) => [s.id, s.name])} />
      <Choice label="Configuration" value={configuration} choose={setConfiguration} options={entries(CONFIGURATIONS)} />
      <Choice label="Hand, as the operator faces the machine" value={hand} choose={setHand} options={entries(HANDS)} />
      <button type="submit" className="press" data-kind="strong">
        Lay the line out
      </button>
    </form>
  );
}

const entries = <K extends string>(words: Record<K, string>) => Object.entries(words) as [K, string][];

function Choice<T extends string>(props: {
  label: string;
  value: T;
  choose: (value: T) => void;
  options: readonly (readonly [T, string])[];
}) {
  return (
    <label>
      {props.label}
      <select value={props.value} onChange={(e) => props.choose(e.target.value as T)}>
        {props.options.map(([value, name]) => (
          <option key={value} value={value}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
