import type { Point, Polygon } from '../../geometry';
import type { ArcPrim, AreaPrim, Ink, Layer, LinePrim, SymbolPrim, TextPrim } from '../drawing';

type TextStyle = Partial<Omit<TextPrim, 'kind' | 'layer' | 'subject' | 'at' | 'text'>>;
type SymbolStyle = Partial<Omit<SymbolPrim, 'kind' | 'layer' | 'subject' | 'at' | 'shape' | 'size'>>;

/** Makes primitives of one layer and one subject: what a drawing of one thing needs. */
export interface Pen {
  line: (points: readonly Point[], ink: Ink) => LinePrim;
  /** A closed outline. */
  area: (ring: Polygon, ink: Ink) => AreaPrim;
  /** An area with holes. */
  areas: (rings: readonly Polygon[], ink: Ink) => AreaPrim;
  circle: (centre: Point, radius: number, ink: Ink) => ArcPrim;
  arc: (centre: Point, radius: number, fromDeg: number, toDeg: number, ink: Ink) => ArcPrim;
  text: (at: Point, text: string, size: number, style?: TextStyle) => TextPrim;
  symbol: (at: Point, shape: SymbolPrim['shape'], size: number, style: SymbolStyle) => SymbolPrim;
}

export function createPen(layer: Layer, subject?: string): Pen {
  const common = subject === undefined ? { layer } : { layer, subject };
  const flat = ({ x, y }: Point): Point => ({ x, y });
  return {
    line: (points, ink) => ({ kind: 'line', ...common, points: points.map(flat), ...ink }),
    area: (ring, ink) => ({ kind: 'area', ...common, rings: [ring], ...ink }),
    areas: (rings, ink) => ({ kind: 'area', ...common, rings, ...ink }),
    circle: (centre, radius, ink) => ({ kind: 'arc', ...common, centre: flat(centre), radius, fromDeg: 0, toDeg: 360, ...ink }),
    arc: (centre, radius, fromDeg, toDeg, ink) => ({ kind: 'arc', ...common, centre: flat(centre), radius, fromDeg, toDeg, ...ink }),
    text: (at, text, size, style = {}) => ({ kind: 'text', ...common, at: flat(at), text, size, ...style }),
    symbol: (at, shape, size, style) => ({ kind: 'symbol', ...common, at: flat(at), shape, size, ...style }),
  };
}
