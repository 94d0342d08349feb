import type { ArcPrim, AreaPrim, Ink, LinePrim, SymbolPrim, TextPrim } from '../drawing';
import type { Point } from '../geometry';
import { DEFAULT_WIDTH } from './inks';

/** What renderers know how to paint. */
export type PlainPrim = LinePrim | AreaPrim | ArcPrim | TextPrim;

/** A symbol as plain primitives. `unit`: drawing units per paper mm, since a symbol keeps its size on paper. */
export function explodeSymbol(symbol: SymbolPrim, unit: number): PlainPrim[] {
  const place = createPlacer(symbol, unit);
  switch (symbol.shape) {
    case 'lozenge':
      return [area(symbol, LOZENGE.map(place))];
    case 'square':
      return [area(symbol, SQUARE.map(place))];
    case 'triangle':
      return [area(symbol, TRIANGLE.map(place))];
    case 'arrow':
      return [area(symbol, ARROW.map(place))];
    case 'dot':
      return [circle({ ...symbol, fill: symbol.fill ?? symbol.stroke, stroke: undefined }, place, unit)];
    case 'ring':
      return [circle(symbol, place, unit)];
    case 'ring-question':
      return [circle(symbol, place, unit), question(symbol, place)];
    case 'tick':
      return [line(symbol, TICK.map(place))];
    case 'check':
      return [line(symbol, CHECK.map(place))];
    case 'cross':
      return [line(symbol, CROSS_A.map(place)), line(symbol, CROSS_B.map(place))];
  }
}

// Shapes of size 1 around the origin, pointing to the right.
const LOZENGE = points([-0.5, 0], [-0.31, -0.31], [0.31, -0.31], [0.5, 0], [0.31, 0.31], [-0.31, 0.31]);
const SQUARE = points([-0.44, -0.44], [0.44, -0.44], [0.44, 0.44], [-0.44, 0.44]);
const TRIANGLE = points([0, -0.5], [0.52, 0.42], [-0.52, 0.42]);
/** The tip is on the place itself. */
const ARROW = points([0, 0], [-1, -0.24], [-0.82, 0], [-1, 0.24]);
const TICK = points([-0.354, 0.354], [0.354, -0.354]);
const CHECK = points([-0.42, 0.02], [-0.12, 0.34], [0.44, -0.36]);
const CROSS_A = points([-0.354, -0.354], [0.354, 0.354]);
const CROSS_B = points([-0.354, 0.354], [0.354, -0.354]);

function points(...pairs: [number, number][]): Point[] {
  return pairs.map(([x, y]) => ({ x, y }));
}

function createPlacer(symbol: SymbolPrim, unit: number): (p: Point) => Point {
  const turn = ((symbol.angleDeg ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn) * symbol.size * unit, Math.sin(turn) * symbol.size * unit];
  const x = symbol.at.x + (symbol.shift?.x ?? 0) * unit;
  const y = symbol.at.y + (symbol.shift?.y ?? 0) * unit;
  return (p) => ({ x: x + p.x * cos - p.y * sin, y: y + p.x * sin + p.y * cos });
}

const common = ({ layer, subject, stroke, width, dash, fill, pattern, fillOpacity }: SymbolPrim) => ({
  layer,
  ...(subject === undefined ? {} : { subject }),
  ...ink({ stroke, width, dash, fill, pattern, fillOpacity }),
});

const ink = (parts: { [K in keyof Ink]: Ink[K] | undefined }): Ink =>
  Object.fromEntries(Object.entries(parts).filter(([, value]) => value !== undefined));

const area = (symbol: SymbolPrim, ring: Point[]): AreaPrim => ({ kind: 'area', rings: [ring], ...common(symbol) });

const line = (symbol: SymbolPrim, path: Point[]): LinePrim => ({ kind: 'line', points: path, ...common(symbol) });

function circle(symbol: SymbolPrim, place: (p: Point) => Point, unit: number): ArcPrim {
  const radius = (symbol.size * unit) / 2;
  return { kind: 'arc', centre: place({ x: 0, y: 0 }), radius, fromDeg: 0, toDeg: 360, ...common(symbol) };
}

function question(symbol: SymbolPrim, place: (p: Point) => Point): TextPrim {
  return {
    kind: 'text',
    layer: symbol.layer,
    ...(symbol.subject === undefined ? {} : { subject: symbol.subject }),
    at: place({ x: 0, y: 0 }),
    text: '?',
    size: symbol.size * 0.86 - (symbol.width ?? DEFAULT_WIDTH),
    anchor: 'middle',
    baseline: 'middle',
    weight: 'semibold',
    hue: symbol.stroke ?? 'ink',
  };
}
