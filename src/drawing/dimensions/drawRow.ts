import { add, angleOf, dot, type Point, rightOf, type Segment, scale } from '../../geometry';
import type { Prim } from '../drawing';
import type { Box } from '../layout/box';
import { cutLine } from '../layout/cutLine';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import type { LaidRow, Stretch } from './layRow';
import type { TextPlace } from './textPlaces';
import { DIMENSION, type DimensionRow } from './types';

/** Space that lines leave around letters, paper mm; less than figures stand above their own line. */
const CLEARANCE = 0.3;

/** A laid dimension line as primitives in plan mm. Lines stop short of `texts` (paper mm). A span without a place for its figures is not drawn. */
export function drawRow({ row, stretches, places }: LaidRow, texts: readonly Box[], unit: number): Prim[] {
  return stretches.flatMap((stretch, i) => {
    const place = places[i] ?? null;
    return place === null ? [] : [...drawStrokes(row, stretch, texts, unit), ...drawFigures(row, stretch, place, unit)];
  });
}

function drawFigures({ axis }: DimensionRow, { span, from, to }: Stretch, place: TextPlace, unit: number): Prim[] {
  const pen = createPen('dimensions', span.subject);
  const plan = (p: Point) => scale(p, unit);
  const angleDeg = angleOf(axis);
  const ticks = [from, to].map((p) => pen.symbol(plan(p), 'tick', DIMENSION.tick, { stroke: 'ink', width: WIDTH.wide, angleDeg }));
  const leader = place.leader.length < 2 ? [] : [pen.line(place.leader.map(plan), { stroke: 'second', width: WIDTH.narrow })];
  const text = pen.text(plan(place.at), span.text, DIMENSION.letter, {
    anchor: 'middle',
    baseline: 'bottom',
    angleDeg: place.angleDeg,
    halo: true,
    ...(span.edit === undefined ? {} : { edit: span.edit }),
  });
  return [...leader, ...ticks, text];
}

/** The dimension line of a span and the extension lines at its ends. */
function drawStrokes(row: DimensionRow, { span, from, to }: Stretch, texts: readonly Box[], unit: number): Prim[] {
  const pen = createPen('dimensions', span.subject);
  const draw = (line: Segment, width: number) =>
    cutLine(line, texts, CLEARANCE).map(({ a, b }) => pen.line([scale(a, unit), scale(b, unit)], { stroke: 'second', width }));
  const extensions = [span.from, span.to].flatMap((end) => extensionOf(row, end, unit));
  return [...extensions.flatMap((line) => draw(line, WIDTH.fine)), ...draw({ a: from, b: to }, WIDTH.narrow)];
}

/** From a gap beside what is measured to a little past the dimension line; none where both lie close together. */
function extensionOf({ axis, across }: DimensionRow, end: Stretch['span']['from'], unit: number): Segment[] {
  const n = rightOf(axis);
  const start = dot(end.point, n) / unit;
  const way = Math.sign(across - start) || 1;
  const t = dot(end.point, axis) / unit;
  const [first, last] = [start + way * (end.lift / unit + DIMENSION.gap), across + way * DIMENSION.pass];
  const at = (c: number) => add(scale(axis, t), scale(n, c));
  return (last - first) * way <= DIMENSION.pass ? [] : [{ a: at(first), b: at(last) }];
}
