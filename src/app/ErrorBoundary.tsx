import { FolderOpen, Save, Undo2 } from 'lucide-react';
import { Component, type ReactNode, useEffect } from 'react';
import { undo } from '../editor';
import type { Plan } from '../plan';
import { actions } from './store/actions';
import { openFile, savePlan } from './store/files';
import { update, useApp } from './store/store';

interface Props {
  /** What is shown; another plan is tried anew. */
  plan: Plan;
  children: ReactNode;
}

interface State {
  error: Error | null;
  /** The plan that was tried. */
  plan: Plan;
}

/**
 * Stands in for the page when the open plan can't be worked out or drawn. The plan itself is whole, since it is only
 * what the user said: it can be saved, and another one opened. A class, since only classes can catch what a child throws.
 */
export class ErrorBoundary extends Component<Props, State> {
  override state: State = { error: null, plan: this.props.plan };

  static getDerivedStateFromError(error: Error): Partial<State> {
    return { error };
  }

  static getDerivedStateFromProps({ plan }: Props, state: State): Partial<State> | null {
    return plan === state.plan ? null : { error: null, plan };
  }

  override render() {
    return this.state.error === null ? this.props.children : <Trouble error={this.state.error} />;
  }
}

function Trouble({ error }: { error: Error }) {
  const canUndo = useApp((s) => s.editor.history.past.length > 0);
  const isBehind = useApp((s) => s.page === 'start');
  // Whatever was open over the plan went with it.
  useEffect(() => update({ pane: null, typing: null }), []);
  return (
    <main className="trouble" inert={isBehind}>
      <h1>Rackway can’t draw this plan</h1>
      <p role="alert">
        The plan is whole and kept in this browser, but something went wrong while it was worked out: {error.message || 'no reason given'}.
      </p>
      <p className="quiet">Save it as a file first. Then take the last change back, or open another plan.</p>
      <div className="ways-in">
        <button type="button" className="press" data-kind="strong" onClick={savePlan}>
          <Save size={16} /> Save the plan file
        </button>
        <button type="button" className="press" disabled={!canUndo} onClick={() => actions.editor(undo)}>
          <Undo2 size={16} /> Take back the last change
        </button>
        <button type="button" className="press" onClick={openFile}>
          <FolderOpen size={16} /> Open a plan file…
        </button>
        <button type="button" className="press" onClick={() => update({ page: 'start' })}>
          Other rooms
        </button>
      </div>
    </main>
  );
}
