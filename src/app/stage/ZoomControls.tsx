import { Maximize, Minus, Plus } from 'lucide-react';
import { zoomAt } from '../../editor';
import { actions } from '../store/actions';
import { fitWhole } from '../store/fitWhole';
import { useApp } from '../store/store';
import { PX_PER_PAPER_MM } from './screenScale';

const STEP = 1.25;

/** How near the paper is: closer, farther, all of it. */
export function ZoomControls() {
  const denominator = useApp((s) => Math.round(PX_PER_PAPER_MM / s.editor.view.scale));
  const zoom = (factor: number) =>
    actions.editor((editor) => ({
      ...editor,
      view: zoomAt(editor.view, { x: editor.viewport.width / 2, y: editor.viewport.height / 2 }, factor),
    }));
  return (
    <div className="zoom">
      <button type="button" className="press" data-kind="bare" aria-label="Closer" title="Closer" onClick={() => zoom(STEP)}>
        <Plus size={16} />
      </button>
      <output title="Scale of the drawing on this screen">1 : {denominator}</output>
      <button type="button" className="press" data-kind="bare" aria-label="Farther" title="Farther" onClick={() => zoom(1 / STEP)}>
        <Minus size={16} />
      </button>
      <button
        type="button"
        className="press"
        data-kind="bare"
        aria-label="Whole plan"
        title="Whole plan"
        onClick={() => actions.editor(fitWhole)}
      >
        <Maximize size={16} />
      </button>
    </div>
  );
}
