import { add, angleOf, dot, type Point, rightOf, scale } from '../../geometry';
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
  /** Bodies and walls: kept clear where it can be. */
  bodies: Box[];
}

export interface LaidRow {
  prims: Prim[];
  texts: Box[];
  lines: Box[];
  cost: number;
  /** Spans whose text found no place. */
  missing: number;
}

const ON_A_LINE = 5;
const ON_A_BODY = 2;
const MISSING = 40;

/** Lays one dimension line: lines, ticks, and each figure in its best free place. */
export function layRow(row: DimensionRow, unit: number, ground: Ground): LaidRow {
  const laid: LaidRow = { prims: [], texts: [], lines: [], cost: row.cost, missing: 0 };
  const stretches = row.spans.map((span) => measureSpan(row, span, unit));
  for (const stretch of stretches) laid.lines.push(boxAround(stretch.from, stretch.to, 3));
  laid.cost +=
    12 * countAlong(laid.lines, ground.lines) +
    30 * countCovered(laid.lines.map(thin), ground.texts) +
    0.5 * countCovered(laid.lines.map(thin), ground.bodies);
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
  let best: TextPlace | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const place of createTextPlaces(row.axis, stretch, all, index)) {
    if (place.cost >= least || !isFree([place.box, ...place.leaderBoxes], taken)) continue;
    const cost = place.cost + ON_A_LINE * countOthers(place.box, lines) + ON_A_BODY * countCovered([place.box], ground.bodies);
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
  laid.prims.push(...drawSpan(row, stretch, best, unit));
}

function drawSpan({ axis, across }: DimensionRow, { span, from, to }: Stretch, place: TextPlace, unit: number): Prim[] {
  const pen = createPen('dimensions', span.subject);
  const ink = { stroke: 'second', width: WIDTH.narrow } as const;
  const plan = (p: Point) => scale(p, unit);
  const ends = [span.from, span.to].map((end) => {
    const n = rightOf(axis);
    const start = dot(end.point, n) / unit;
    const way = Math.sign(across - start) || 1;
    const t = dot(end.point, axis) / unit;
    const first = start + way * (end.lift / unit + DIMENSION.gap);
    const last = across + way * DIMENSION.pass;
    const at = (c: number) => plan(add(scale(axis, t), scale(n, c)));
    return (last - first) * way > DIMENSION.pass ? [pen.line([at(first), at(last)], { ...ink, width: WIDTH.fine })] : [];
  });
  const angleDeg = angleOf(axis);
  const ticks = [from, to].map((p) => pen.symbol(plan(p), 'tick', DIMENSION.tick, { stroke: 'ink', width: WIDTH.wide, angleDeg }));
  const leader = place.leader.length < 2 ? [] : [pen.line(place.leader.map(plan), ink)];
  const text = pen.text(plan(place.at), span.text, DIMENSION.letter, {
    anchor: 'middle',
    baseline: 'bottom',
    angleDeg: place.angleDeg,
    halo: true,
    ...(span.edit === undefined ? {} : { edit: span.edit }),
  });
  return [...ends.flat(), pen.line([plan(from), plan(to)], ink), ...ticks, ...leader, text];
}

const thin = (box: Box): Box => ({ ...box, halfHeight: 0.05 });

const countOthers = (box: Box, lines: readonly Box[]) => lines.filter((line) => overlaps(box, line)).length;

/** Dimension lines that run on or right beside another. */
const countAlong = (lines: readonly Box[], others: readonly Box[]) =>
  lines.reduce(
    (sum, line) => sum + others.filter((other) => Math.abs(dot(line.d, rightOf(other.d))) < 0.05 && overlaps(line, other)).length,
    0,
  );
