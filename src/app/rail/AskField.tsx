import { fieldAt } from '../../editor';
import { acts } from '../store/acts';
import { readState } from '../store/store';
import { usePanelWork } from '../store/work';
import { FieldRow } from './FieldRow';

/** The one field that a finding asks for, right there. */
export function AskField({ ask }: { ask: { input: string; path: (string | number)[] } }) {
  const { scene } = usePanelWork();
  const field = fieldAt(readState().editor.history.present, scene, ask.path);
  if (!field) {
    return (
      <button type="button" className="press" onClick={() => acts.select([])}>
        Show where to give it
      </button>
    );
  }
  return <FieldRow field={field} isAsked />;
}
