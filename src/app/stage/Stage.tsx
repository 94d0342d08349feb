import { useEffect, useRef } from 'react';
import { cursorFor, hintOf } from '../../editor';
import { useSize } from '../parts/useSize';
import { actions } from '../store/actions';
import { useApp } from '../store/store';
import { AddMenu } from './AddMenu';
import { usePlanCanvas } from './canvas/usePlanCanvas';
import { InlineField } from './InlineField';
import { Message } from './Message';
import { useKeys } from './useKeys';
import { usePointer } from './usePointer';
import { ZoomControls } from './ZoomControls';

/** The paper with the plan on it, and what stands on its edges. */
export function Stage() {
  const surface = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLDivElement>(null);
  const size = useSize(surface);
  useEffect(() => {
    if (size) actions.event({ type: 'resize', ...size });
  }, [size]);
  usePointer(surface, usePlanCanvas(canvas, size !== null));
  useKeys();
  const cursor = useApp((s) => cursorFor(s.editor));
  const view = useApp((s) => s.editor.view);
  return (
    <main className="stage">
      {/* The list beside the canvas does all that this surface does, for those who use no pointer. */}
      <div
        ref={surface}
        className="surface"
        data-cursor={cursor}
        // Where the plan lies: px per mm, and the px of its origin.
        data-view={`${view.scale} ${view.dx} ${view.dy}`}
        role="application"
        aria-label="Plan of the dish room. The list in the rail reaches everything on it."
        tabIndex={0}
      >
        {/* The surface hears the pointer, which it captures and pinches with; the canvas is asked what lies under it. */}
        <div ref={canvas} className="canvas" />
      </div>
      <div className="edge">
        <AddMenu />
      </div>
      <ToolHint />
      <InlineField />
      <ZoomControls />
      <Message />
    </main>
  );
}

/** What the tool in hand waits for, and the way to put it down. */
function ToolHint() {
  const tool = useApp((s) => s.editor.tool);
  if (tool.tool === 'select') return null;
  return (
    <div className="hint" role="status">
      {hintOf(tool)}
      <button type="button" className="press" onClick={() => actions.tool({ tool: 'select' })}>
        Done
      </button>
    </div>
  );
}
