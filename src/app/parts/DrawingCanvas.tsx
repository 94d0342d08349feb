import { useEffect, useRef } from 'react';
import { type Drawing, measureDrawing } from '../../drawing';
import type { Bounds } from '../../geometry';
import { palettes, renderCanvas } from '../../render';
import { useApp } from '../store/store';
import { type Size, useSize } from './useSize';

/** Top, right, bottom, left. */
type Margin = readonly [number, number, number, number];

interface Props {
  /** Draws for a paper scale 1 : n: texts and symbols are laid out for it. */
  draw: (scaleDenominator: number) => Drawing;
  /** Free space around the drawing's geometry, px. */
  margin?: Margin;
  /** Screen px for one millimetre of ink. */
  ink?: number;
  label: string;
}

/** A display list on a canvas of its own, as large as it fits. */
export function DrawingCanvas({ draw, margin = [12, 12, 12, 12], ink = 3.6, label }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box);
  const palette = palettes[useApp((s) => s.theme)];

  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context || !size || size.width === 0 || size.height === 0) return;
    clear(context, size);
    const bounds = measureDrawing(draw(FIRST_GUESS));
    if (!bounds) return;
    const view = fit(bounds, size, margin);
    renderCanvas(context, draw(ink / view.scale), { ...view, ...size, pxPerPaperMm: ink, palette });
  });

  return (
    <div ref={box} style={{ position: 'absolute', inset: 0 }}>
      <canvas ref={canvas} role="img" aria-label={label} />
    </div>
  );
}

/** The geometry does not depend on the paper scale; its extent is taken from a drawing at this one. */
const FIRST_GUESS = 20;

function clear(context: CanvasRenderingContext2D, { width, height }: Size) {
  const ratio = window.devicePixelRatio || 1;
  const { canvas } = context;
  const [across, down] = [Math.round(width * ratio), Math.round(height * ratio)];
  if (canvas.width !== across) canvas.width = across;
  if (canvas.height !== down) canvas.height = down;
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.clearRect(0, 0, width, height);
}

function fit(b: Bounds, size: Size, [top, right, bottom, left]: Margin) {
  const [width, height] = [Math.max(1, b.maxX - b.minX), Math.max(1, b.maxY - b.minY)];
  const [w, h] = [Math.max(10, size.width - left - right), Math.max(10, size.height - top - bottom)];
  const scale = Math.min(w / width, h / height);
  return { scale, dx: left + (w - width * scale) / 2 - b.minX * scale, dy: top + (h - height * scale) / 2 - b.minY * scale };
}
