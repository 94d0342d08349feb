import type { ArcPrim, AreaPrim, Ink, LinePrim, TextPrim } from '../../drawing';
import type { Point, Polygon } from '../../geometry';
import type { PlainPrim } from '../explodeSymbol';
import { dotRings, hatchRings, type Window } from '../hatch';
import { DASHES, DEFAULT_WIDTH, FONT_FAMILY, HALO, PATTERNS } from '../inks';
import { layText } from '../layText';
import type { Palette } from '../palette';
import type { Brush } from './context';
import { recallPattern } from './recallPattern';

/** Paints one primitive. `seen`: the part of the drawing that the canvas shows, in drawing units. */
export function paintPrim(brush: Brush, prim: PlainPrim, palette: Palette, seen: Window): void {
  switch (prim.kind) {
    case 'line':
      paintLine(brush, prim, palette, seen);
      break;
    case 'area':
      paintArea(brush, prim, palette, seen);
      break;
    case 'arc':
      paintArc(brush, prim, palette);
      break;
    case 'text':
      paintText(brush, prim, palette);
      break;
  }
}

function paintLine(brush: Brush, prim: LinePrim, palette: Palette, seen: Window): void {
  brush.context.beginPath();
  trace(brush, prim.points, prim.closed === true);
  if (prim.closed === true) {
    fill(brush, prim, palette);
    paintPattern(brush, [[...prim.points]], prim, palette, seen);
    brush.context.beginPath();
    trace(brush, prim.points, true);
  }
  stroke(brush, prim, palette);
}

function paintArea(brush: Brush, prim: AreaPrim, palette: Palette, seen: Window): void {
  brush.context.beginPath();
  for (const ring of prim.rings) trace(brush, ring, true);
  fill(brush, prim, palette);
  stroke(brush, prim, palette);
  paintPattern(brush, prim.rings, prim, palette, seen);
}

function paintArc(brush: Brush, prim: ArcPrim, palette: Palette): void {
  const { scale, dx, dy } = brush.view;
  const { centre, radius, fromDeg, toDeg } = prim;
  brush.context.beginPath();
  brush.context.arc(centre.x * scale + dx, centre.y * scale + dy, radius * scale, radians(fromDeg), radians(toDeg));
  fill(brush, prim, palette);
  stroke(brush, prim, palette);
}

function paintText(brush: Brush, prim: TextPrim, palette: Palette): void {
  const { context, view } = brush;
  const { x, y, drop, size } = layText(prim, view.pxPerPaperMm / view.scale);
  const px = size * view.scale;
  brush.set('font', `${prim.weight === 'semibold' ? '600 ' : ''}${px.toFixed(2)}px "${FONT_FAMILY}"`);
  brush.set('textAlign', { start: 'left', middle: 'center', end: 'right' }[prim.anchor ?? 'start']);
  const angle = radians(prim.angleDeg ?? 0);
  context.translate(x * view.scale + view.dx, y * view.scale + view.dy);
  if (angle !== 0) context.rotate(angle);
  if (prim.halo === true) {
    brush.set('strokeStyle', palette.paper);
    brush.set('lineWidth', HALO * px);
    brush.setDash(DASHES.solid);
    context.strokeText(prim.text, 0, drop * view.scale);
  }
  brush.set('fillStyle', palette[prim.hue ?? 'ink']);
  brush.set('globalAlpha', 1);
  context.fillText(prim.text, 0, drop * view.scale);
  if (angle !== 0) context.rotate(-angle);
  context.translate(-(x * view.scale + view.dx), -(y * view.scale + view.dy));
}

function fill(brush: Brush, ink: Ink, palette: Palette): void {
  if (ink.fill === undefined || (ink.pattern !== undefined && ink.pattern !== 'flat')) return;
  brush.set('fillStyle', palette[ink.fill]);
  brush.set('globalAlpha', ink.fillOpacity ?? 1);
  brush.context.fill('evenodd');
  brush.set('globalAlpha', 1);
}

function stroke(brush: Brush, ink: Ink, palette: Palette): void {
  if (ink.stroke === undefined) return;
  setPen(brush, palette[ink.stroke], (ink.width ?? DEFAULT_WIDTH) * brush.view.pxPerPaperMm, DASHES[ink.dash ?? 'solid']);
  brush.context.stroke();
}

/** A pattern as one path: all lines, or all dots. */
function paintPattern(brush: Brush, rings: readonly Polygon[], ink: Ink, palette: Palette, seen: Window): void {
  if (ink.fill === undefined || ink.pattern === undefined || ink.pattern === 'none' || ink.pattern === 'flat') return;
  const { context, view } = brush;
  const unit = view.pxPerPaperMm / view.scale;
  const pattern = PATTERNS[ink.pattern];
  context.beginPath();
  if (pattern.kind === 'lines') {
    const lines = recallPattern(ink, unit, seen, () => hatchRings(rings, pattern, unit, seen));
    for (const { a, b } of lines) trace(brush, [a, b], false);
    setPen(brush, palette[ink.fill], pattern.width * view.pxPerPaperMm, DASHES.solid);
    context.stroke();
    return;
  }
  const side = pattern.diameter * view.pxPerPaperMm;
  for (const dot of recallPattern(ink, unit, seen, () => dotRings(rings, pattern, unit, seen))) {
    context.rect(dot.x * view.scale + view.dx - side / 2, dot.y * view.scale + view.dy - side / 2, side, side);
  }
  brush.set('fillStyle', palette[ink.fill]);
  context.fill();
}

/** No line thinner than a third of a pixel times two: it would vanish. */
function setPen(brush: Brush, hue: string, width: number, dash: readonly number[]): void {
  brush.set('strokeStyle', hue);
  brush.set('lineWidth', Math.max(width, 0.6));
  brush.setDash(dash);
}

function trace({ context, view }: Brush, points: readonly Point[], isClosed: boolean): void {
  const { scale, dx, dy } = view;
  let isFirst = true;
  for (const p of points) {
    if (isFirst) context.moveTo(p.x * scale + dx, p.y * scale + dy);
    else context.lineTo(p.x * scale + dx, p.y * scale + dy);
    isFirst = false;
  }
  if (isClosed) context.closePath();
}

const radians = (deg: number) => (deg * Math.PI) / 180;
