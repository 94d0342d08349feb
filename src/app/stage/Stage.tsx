import { useEffect, useRef } from 'react';
import { Stage as KonvaStage, Layer } from 'react-konva/lib/ReactKonvaCore';
import { cursorFor, hintOf } from '../../editor';
import { useSize } from '../parts/useSize';
import { acts } from '../store/acts';
import { useApp } from '../store/store';
import { AddMenu } from './AddMenu';
import { DrawingShape } from './DrawingShape';
import { deriveMovingDrawing, deriveOverlayDrawing, deriveStillDrawing } from './drawings';
import { InlineField } from './InlineField';
import { Lens } from './Lens';
import { Message } from './Message';
import { useKeys } from './useKeys';
import { usePointer } from './usePointer';

/** The paper: the plan below; above it what is being moved, what is chosen and held. Konva holds the two layers; display lists draw them. */
export function Stage() {
  const surface = useRef<HTMLDivElement>(null);
  const size = useSize(surface);
  useEffect(() => {
    if (size) acts.event({ type: 'resize', ...size });
  }, [size]);
  usePointer(surface);
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
        {size && (
          <KonvaStage width={size.width} height={size.height} listening={false}>
            <Layer listening={false}>
              <StillShape />
            </Layer>
            <Layer listening={false}>
              <MovingShape />
              <OverlayShape />
            </Layer>
          </KonvaStage>
        )}
      </div>
      <div className="edge">
        <AddMenu />
      </div>
      <ToolHint />
      <InlineField />
      <Lens />
      <Message />
    </main>
  );
}

const StillShape = () => <DrawingShape drawing={useApp(deriveStillDrawing)} />;

const MovingShape = () => <DrawingShape drawing={useApp(deriveMovingDrawing)} />;

const OverlayShape = () => <DrawingShape drawing={useApp(deriveOverlayDrawing)} />;

/** What the tool in hand waits for, and the way to put it down. */
function ToolHint() {
  const tool = useApp((s) => s.editor.tool);
  if (tool.tool === 'select') return null;
  return (
    <div className="hint" role="status">
      {hintOf(tool)}
      <button type="button" className="press" onClick={() => acts.tool({ tool: 'select' })}>
        Done
      </button>
    </div>
  );
}
