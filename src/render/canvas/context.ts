/** As much of a canvas's 2D context as drawings need: the browser's own fits, and a test can write one down. */
export interface CanvasContext {
  strokeStyle: unknown;
  fillStyle: unknown;
  lineWidth: number;
  lineJoin: unknown;
  lineCap: unknown;
  globalAlpha: number;
  font: string;
  textAlign: unknown;
  textBaseline: unknown;
  save: () => void;
  restore: () => void;
  translate: (x: number, y: number) => void;
  rotate: (radians: number) => void;
  beginPath: () => void;
  moveTo: (x: number, y: number) => void;
  lineTo: (x: number, y: number) => void;
  closePath: () => void;
  arc: (x: number, y: number, radius: number, from: number, to: number) => void;
  rect: (x: number, y: number, width: number, height: number) => void;
  stroke: () => void;
  fill: (rule?: 'evenodd' | 'nonzero') => void;
  setLineDash: (lengths: number[]) => void;
  fillText: (text: string, x: number, y: number) => void;
  strokeText: (text: string, x: number, y: number) => void;
}

/** Where a drawing lies on the canvas. */
export interface CanvasView {
  /** Px per drawing unit, and the drawing's origin, px. */
  scale: number;
  dx: number;
  dy: number;
  /** How large a paper millimetre of ink is, px. */
  pxPerPaperMm: number;
}

type Attribute = 'strokeStyle' | 'fillStyle' | 'lineWidth' | 'font' | 'textAlign' | 'globalAlpha';

export interface Brush {
  context: CanvasContext;
  view: CanvasView;
  /** Sets an attribute only when it changes: setting one costs more than many strokes. */
  set: <K extends Attribute>(key: K, value: CanvasContext[K] & (string | number)) => void;
  setDash: (dash: readonly number[]) => void;
}

/** A brush that remembers what the context is set to. It must be the only one to paint while it is in use. */
export function createBrush(context: CanvasContext, view: CanvasView): Brush {
  const now = new Map<string, string | number>();
  let dashNow: readonly number[] = [];
  context.setLineDash([]);
  return {
    context,
    view,
    set: (key, value) => {
      if (now.get(key) === value) return;
      now.set(key, value);
      context[key] = value;
    },
    setDash: (dash) => {
      if (dash === dashNow) return;
      dashNow = dash;
      context.setLineDash(dash.map((length) => length * view.pxPerPaperMm));
    },
  };
}
