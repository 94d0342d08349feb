import type { Point, Polygon } from '../geometry';

/**
 * The drawing vocabulary, shared by the screen and the paper. A drawing is a display list: plain
 * data, back to front. Its geometry is in the drawing's own unit (plan millimetres for a plan,
 * paper millimetres for a sheet); everything that is ink — line widths, text sizes, dashes, hatch
 * spacing, `shift` — is in paper millimetres and does not grow when the drawing is scaled.
 */
export type Drawing = readonly Prim[];

/** Inks of the drawing; each renderer resolves them to the hues of its paper. */
export const HUES = [
  'ink',
  'second',
  'hairline',
  'paper',
  'soiled',
  'clean',
  'water',
  'air',
  'power',
  'chosen',
  'stop',
  'watch',
  'ask',
  'clear',
] as const;
export type Hue = (typeof HUES)[number];

/** Line patterns, so that nothing depends on hue alone. */
export type Dash = 'solid' | 'short' | 'long' | 'dash-dot' | 'dotted';

/** Fills with a pattern: soiled 45° hatch, clean dots, walls building hatch. */
export type Pattern = 'none' | 'flat' | 'hatch-45' | 'dots' | 'wall';

/** Groups that a renderer may switch: the editor hides dimensions under a zoom, a sheet leaves out findings. */
export const LAYERS = ['room', 'floor', 'zones', 'equipment', 'above', 'run', 'path', 'dimensions', 'marks', 'notes', 'findings'] as const;
export type Layer = (typeof LAYERS)[number];

interface Common {
  layer: Layer;
  /** Id of the plan's thing that it shows; a press on it selects that thing. */
  subject?: string;
}

export interface Ink {
  stroke?: Hue;
  /** Line width, paper mm. */
  width?: number;
  dash?: Dash;
  fill?: Hue;
  pattern?: Pattern;
  /** 0…1, of the fill. */
  fillOpacity?: number;
}

export interface LinePrim extends Common, Ink {
  kind: 'line';
  points: readonly Point[];
  closed?: boolean;
}

/** One area with optional holes (even–odd). */
export interface AreaPrim extends Common, Ink {
  kind: 'area';
  rings: readonly Polygon[];
}

/** Arc clockwise on the paper from `fromDeg` to `toDeg` (0 is to the right); 0 to 360 is a circle. */
export interface ArcPrim extends Common, Ink {
  kind: 'arc';
  centre: Point;
  radius: number;
  fromDeg: number;
  toDeg: number;
}

export interface TextPrim extends Common {
  kind: 'text';
  at: Point;
  /** Moves the text from `at`, in paper mm along the paper's axes (before rotation of the text itself). */
  shift?: Point;
  text: string;
  /** Height of the letters (em), paper mm. */
  size: number;
  angleDeg?: number;
  anchor?: 'start' | 'middle' | 'end';
  baseline?: 'top' | 'middle' | 'bottom';
  hue?: Hue;
  weight?: 'regular' | 'semibold';
  /** A knock-out of paper colour behind the letters. */
  halo?: boolean;
  /** A number that can be pressed and typed into: path of the field in the plan. */
  edit?: readonly (string | number)[];
}

/** A symbol of fixed paper size. */
export interface SymbolPrim extends Common, Ink {
  kind: 'symbol';
  at: Point;
  shift?: Point;
  shape: 'lozenge' | 'dot' | 'ring' | 'tick' | 'arrow' | 'cross' | 'triangle' | 'square' | 'ring-question' | 'check';
  /** Size across, paper mm. */
  size: number;
  angleDeg?: number;
}

export type Prim = LinePrim | AreaPrim | ArcPrim | TextPrim | SymbolPrim;

/** Moves and scales a drawing's geometry; its ink stays. `scale` is new unit per old unit. */
export function placeDrawing(drawing: Drawing, scale: number, dx: number, dy: number): Prim[] {
  return mapDrawing(drawing, (p) => ({ x: p.x * scale + dx, y: p.y * scale + dy }), scale);
}

/** Moves every point of a drawing's geometry, and multiplies radii; its ink stays. */
export function mapDrawing(drawing: Drawing, at: (p: Point) => Point, radiusFactor = 1): Prim[] {
  return drawing.map((prim): Prim => {
    switch (prim.kind) {
      case 'line':
        return { ...prim, points: prim.points.map(at) };
      case 'area':
        return { ...prim, rings: prim.rings.map((ring) => ring.map(at)) };
      case 'arc':
        return { ...prim, centre: at(prim.centre), radius: prim.radius * radiusFactor };
      case 'text':
      case 'symbol':
        return { ...prim, at: at(prim.at) };
    }
  });
}
