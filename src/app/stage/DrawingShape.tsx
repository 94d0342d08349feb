import { Shape } from 'react-konva/lib/ReactKonvaCore';
import type { Drawing } from '../../drawing';
import { palettes, renderCanvas } from '../../render';
import { useApp } from '../store/store';
import { PX_PER_PAPER_MM } from './screenScale';

/** A display list as one Konva shape: a shape a primitive would cost a redraw of each on every frame. */
export function DrawingShape({ drawing }: { drawing: Drawing }) {
  const view = useApp((s) => s.editor.view);
  const palette = palettes[useApp((s) => s.paper)];
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(context, shape) => {
        const stage = shape.getStage();
        if (!stage) return;
        renderCanvas(context._context, drawing, {
          ...view,
          pxPerPaperMm: PX_PER_PAPER_MM,
          palette,
          width: stage.width(),
          height: stage.height(),
        });
      }}
    />
  );
}
