import { useEffect, useRef } from 'react';
import { palettes, renderCanvas } from '../../render';
import { type Drawing, type DrawingBounds, measureDrawing } from '../../sheets';
import { useApp } from '../store/store';
import { type Size, useSize } from './useSize';

const PX_PER_PAPER_MM = 3.6;

interface Props {
  drawing: Drawing;
  /** Free space around the drawing, px: top, right, bottom, left. */
  margin?: readonly [number, number, number, number];
  label: string;
  onPress?: (point: { x: number; y: number }) => void;
}

/** A display list on a canvas of its own, as large as it fits. */
export function DrawingCanvas({ drawing, margin = [12, 12, 12, 12], label, onPress }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box);
  const paper = useApp((s) => s.paper);
  const bounds = measureDrawing(drawing);
  const view = size && bounds && fit(bounds, size, margin);

  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context || !size || !view) return;
    const ratio = window.devicePixelRatio || 1;
    context.canvas.width = Math.round(size.width * ratio);
    context.canvas.height = Math.round(size.height * ratio);
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    context.clearRect(0, 0, size.width, size.height);
    renderCanvas(context, drawing, { ...view, ...size, pxPerPaperMm: PX_PER_PAPER_MM, palette: palettes[paper] });
  });

  const press = (e: React.MouseEvent) => {
    const rect = canvas.current?.getBoundingClientRect();
    if (rect && view) onPress?.({ x: (e.clientX - rect.left - view.dx) / view.scale, y: (e.clientY - rect.top - view.dy) / view.scale });
  };
  return (
    <div ref={box} style={{ position: 'absolute', inset: 0 }}>
      <canvas ref={canvas} role="img" aria-label={label} onClick={onPress && press} />
    </div>
  );
}

function fit(b: DrawingBounds, size: Size, [top, right, bottom, left]: readonly [number, number, number, number]) {
  const [width, height] = [Math.max(1, b.maxX - b.minX), Math.max(1, b.maxY - b.minY)];
  const [w, h] = [Math.max(10, size.width - left - right), Math.max(10, size.height - top - bottom)];
  const scale = Math.min(w / width, h / height);
  return { scale, dx: left + (w - width * scale) / 2 - b.minX * scale, dy: top + (h - height * scale) / 2 - b.minY * scale };
}
