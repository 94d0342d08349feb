import { add, angleOf, dot, type Point, rightOf, type Segment, scale } from '../../geometry';
import type { Prim } from '../drawing';
import { type Box, boxAround, overlaps } from '../layout/box';
import { countCovered, isFree } from '../layout/placeLabels';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { createTextPlaces, type TextPlace } from './textPlaces';
import { DIMENSION, type DimensionRow, type Span } from './types';

/** What is on the paper already, paper mm. */
export interface Ground {
  /** Texts and marks: nothing may cover them. */
  texts: Box[];
  /** Dimension lines: none may lie on another, and texts keep off them where they can. */
  lines: Box[];
  /** Bodies and walls: kept clear where it can be, but for the body that is measured. */
  bodies: Body[];
}

/** A straight line of a dimension, paper mm; it will stop short of letters. */
export interface Stroke {
  line: Segment;
  width: number;
  subject: string | undefined;
}

/** A body under the figures. */
export interface Body {
  box: Box;
  subject: string | null;
}

export interface LaidRow {
  prims: Prim[];
  strokes: Stroke[];
  texts: Box[];
  lines: Box[];
  cost: number;
  /** Spans whose text found no place. */
  missing: number;
}

const ON_A_LINE = 5;
const ON_A_BODY = 4;
const ACROSS_A_BODY = 1;
const MISSING = 40;

/** Lays one dimension line: lines, ticks, and each figure in its best free place. */
export function layRow(row: DimensionRow, unit: number, ground: Ground): LaidRow {
  const laid: LaidRow = { prims: [], strokes: [], texts: [], lines: [], cost: row.cost, missing: 0 };
  const stretches = row.spans.map((span) => measureSpan(row, span, unit));
  for (const stretch of stretches) laid.lines.push(boxAround(stretch.from, stretch.to, 3));
  laid.cost +=
    12 * countAlong(laid.lines, ground.lines) +
    30 * countCovered(laid.lines.map(thin), ground.texts) +
    ACROSS_A_BODY * countCovered(laid.lines.map(thin), othersThan(row.spans[0], ground.bodies));
  stretches.forEach((stretch, i) => layText(row, stretch, stretches, i, unit, ground, laid));
  return laid;
}

/** A span in paper mm on its dimension line, in the order of the axis. */
export interface Stretch {
  span: Span;
  from: Point;
  to: Point;
  length: number;
}

function measureSpan({ axis, across }: DimensionRow, span: Span, unit: number): Stretch {
  const [a, b] = [span.from, span.to].map((end) => dot(end.point, axis) / unit).toSorted((p, q) => p - q);
  const at = (t: number) => add(scale(axis, t), scale(rightOf(axis), across));
  return { span, from: at(a ?? 0), to: at(b ?? 0), length: (b ?? 0) - (a ?? 0) };
}

function layText(
  row: DimensionRow,
  stretch: Stretch,
  all: readonly Stretch[],
  index: number,
  unit: number,
  ground: Ground,
  laid: LaidRow,
): void {
  const taken = [...ground.texts, ...laid.texts];
  const lines = [...ground.lines, ...laid.lines].map(thin);
  const bodies = othersThan(stretch.span, ground.bodies);
  let best: TextPlace | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const place of createTextPlaces(row.axis, stretch, all, index)) {
    if (place.cost >= least || !isFree([place.box, ...place.leaderBoxes], taken)) continue;
    const cost = place.cost + ON_A_LINE * countOthers(place.box, lines) + ON_A_BODY * countCovered([place.box], bodies);
    if (cost >= least) continue;
    [best, least] = [place, cost];
  }
  if (best === null) {
    laid.missing += 1;
    laid.cost += MISSING;
    return;
  }
  laid.cost += least;
  laid.texts.push(best.box);
  laid.strokes.push(...createStrokes(row, stretch, unit));
  laid.prims.push(...drawSpan(row, stretch, best, unit));
}

function drawSpan({ axis }: DimensionRow, { span, from, to }: Stretch, place: TextPlace, unit: number): Prim[] {
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
  return [...ticks, ...leader, text];
}

/** The dimension line of a span and the extension lines at its ends. */
function createStrokes({ axis, across }: DimensionRow, { span, from, to }: Stretch, unit: number): Stroke[] {
  const n = rightOf(axis);
  const extensions = [span.from, span.to].flatMap((end): Stroke[] => {
    const start = dot(end.point, n) / unit;
    const way = Math.sign(across - start) || 1;
    const t = dot(end.point, axis) / unit;
    const [first, last] = [start + way * (end.lift / unit + DIMENSION.gap), across + way * DIMENSION.pass];
    const at = (c: number) => add(scale(axis, t), scale(n, c));
    const isShort = (last - first) * way <= DIMENSION.pass;
    return isShort ? [] : [{ line: { a: at(first), b: at(last) }, width: WIDTH.fine, subject: span.subject }];
  });
  return [...extensions, { line: { a: from, b: to }, width: WIDTH.narrow, subject: span.subject }];
}

const othersThan = (span: Span | undefined, bodies: readonly Body[]) =>
  bodies.filter(({ subject }) => subject === null || subject !== span?.subject).map(({ box }) => box);

const thin = (box: Box): Box => ({ ...box, halfHeight: 0.05 });

const countOthers = (box: Box, lines: readonly Box[]) => lines.filter((line) => overlaps(box, line)).length;

/** Dimension lines that run on or right beside another. */
const countAlong = (lines: readonly Box[], others: readonly Box[]) =>
  lines.reduce(
    (sum, line) => sum + others.filter((other) => Math.abs(dot(line.d, rightOf(other.d))) < 0.05 && overlaps(line, other)).length,
    0,
  );
