import type { ArcPrim, AreaPrim, Ink, LinePrim, TextPrim } from '../../drawing';
import type { Point, Polygon } from '../../geometry';
import type { PlainPrim } from '../explodeSymbol';
import { dotRings, hatchRings } from '../hatch';
import { DASHES, DEFAULT_WIDTH, FONT_FAMILY, HALO, PATTERNS } from '../inks';
import { layText } from '../layText';
import type { Palette } from '../palette';
import { type Attributes, el, escapeXml, num } from './el';

/** One primitive of a sheet (paper millimetres) as SVG. */
export function renderPrim(prim: PlainPrim, palette: Palette): string {
  switch (prim.kind) {
    case 'line':
      return renderLine(prim, palette);
    case 'area':
      return renderArea(prim, palette);
    case 'arc':
      return renderArc(prim, palette);
    case 'text':
      return renderText(prim, palette);
  }
}

function renderLine(prim: LinePrim, palette: Palette): string {
  const d = trace(prim.points, prim.closed === true);
  const hatch = prim.closed === true ? renderPattern([[...prim.points]], prim, palette) : '';
  return hatch + el('path', { d, ...inkOf(prim, palette, prim.closed === true), ...about(prim) });
}

function renderArea(prim: AreaPrim, palette: Palette): string {
  const d = prim.rings.map((ring) => trace(ring, true)).join('');
  return (
    el('path', { d, 'fill-rule': 'evenodd', ...inkOf(prim, palette, true), ...about(prim) }) + renderPattern(prim.rings, prim, palette)
  );
}

function renderArc(prim: ArcPrim, palette: Palette): string {
  const { centre, radius, fromDeg, toDeg } = prim;
  const style = { ...inkOf(prim, palette, true), ...about(prim) };
  if (toDeg - fromDeg >= 360) return el('circle', { cx: centre.x, cy: centre.y, r: radius, ...style });
  const from = onCircle(prim, fromDeg);
  const to = onCircle(prim, toDeg);
  const isLarge = toDeg - fromDeg > 180 ? 1 : 0;
  return el('path', { d: `M${xy(from)}A${num(radius)} ${num(radius)} 0 ${isLarge} 1 ${xy(to)}`, ...style });
}

function onCircle({ centre, radius }: ArcPrim, deg: number): Point {
  const angle = (deg * Math.PI) / 180;
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
}

function renderText(prim: TextPrim, palette: Palette): string {
  const { x, y, drop, size } = layText(prim, 1);
  const turn = prim.angleDeg === undefined || prim.angleDeg === 0 ? undefined : `rotate(${num(prim.angleDeg)} ${num(x)} ${num(y)})`;
  const halo =
    prim.halo === true ? { stroke: palette.paper, 'stroke-width': HALO * size, 'stroke-linejoin': 'round', 'paint-order': 'stroke' } : {};
  return el(
    'text',
    {
      x,
      y: y + drop,
      'font-family': FONT_FAMILY,
      'font-size': size,
      'font-weight': prim.weight === 'semibold' ? 600 : undefined,
      'text-anchor': prim.anchor === undefined || prim.anchor === 'start' ? undefined : prim.anchor,
      transform: turn,
      fill: palette[prim.hue ?? 'ink'],
      ...halo,
      ...about(prim),
      'data-edit': prim.edit?.join('.'),
    },
    escapeXml(prim.text),
  );
}

/** A pattern as the lines or dots themselves, clipped to the area: it prints the same everywhere. */
function renderPattern(rings: readonly Polygon[], ink: Ink, palette: Palette): string {
  if (ink.pattern === undefined || ink.pattern === 'none' || ink.pattern === 'flat' || ink.fill === undefined) return '';
  const pattern = PATTERNS[ink.pattern];
  const hue = palette[ink.fill];
  if (pattern.kind === 'lines') {
    const d = hatchRings(rings, pattern, 1).map(({ a, b }) => `M${xy(a)}L${xy(b)}`);
    return d.length === 0 ? '' : el('path', { d: d.join(''), fill: 'none', stroke: hue, 'stroke-width': pattern.width });
  }
  const d = dotRings(rings, pattern, 1).map((dot) => `M${xy(dot)}h0`);
  return d.length === 0 ? '' : el('path', { d: d.join(''), stroke: hue, 'stroke-width': pattern.diameter, 'stroke-linecap': 'round' });
}

function inkOf(ink: Ink, palette: Palette, canFill: boolean): Attributes {
  const isFlat = canFill && ink.fill !== undefined && (ink.pattern === undefined || ink.pattern === 'flat');
  const dash = DASHES[ink.dash ?? 'solid'];
  return {
    fill: isFlat && ink.fill !== undefined ? palette[ink.fill] : 'none',
    'fill-opacity': isFlat ? ink.fillOpacity : undefined,
    stroke: ink.stroke === undefined ? undefined : palette[ink.stroke],
    'stroke-width': ink.stroke === undefined ? undefined : (ink.width ?? DEFAULT_WIDTH),
    'stroke-dasharray': ink.stroke === undefined || dash.length === 0 ? undefined : dash.map(num).join(' '),
  };
}

const about = ({ subject }: { subject?: string }): Attributes => ({ 'data-subject': subject });
const xy = (p: Point) => `${num(p.x)} ${num(p.y)}`;

function trace(points: readonly Point[], isClosed: boolean): string {
  return points.map((p, i) => `${i === 0 ? 'M' : 'L'}${xy(p)}`).join('') + (isClosed ? 'Z' : '');
}
