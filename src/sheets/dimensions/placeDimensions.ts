import { dot, type Point, scale } from '../../geometry';
import type { Prim } from '../drawing';
import type { Box } from '../layout/box';
import { cutLine } from '../layout/cutLine';
import { createPen } from '../support/pen';
import { type Ground, type LaidRow, layRow, type Stroke } from './layRow';
import { DIMENSION, type DimensionRequest, type DimensionRow } from './types';

/**
 * Places dimension lines one after the other, each where it costs least: no text ever covers another text or a mark.
 * A distance that stands on the drawing already is not drawn twice (ISO 129-1); figures without a free place are left out.
 */
export function placeDimensions(requests: readonly DimensionRequest[], unit: number, ground: Ground): Prim[] {
  const now: Ground = { texts: [...ground.texts], lines: [...ground.lines], bodies: [...ground.bodies] };
  const drawn: Interval[] = [];
  const outermost = new Map<string, number>();
  const rows = requests.flatMap((request) => {
    const laid = chooseRow(beyond(request, outermost), unit, now, drawn);
    if (laid === null) return [];
    if (request.side !== undefined) outermost.set(request.side, laid.across);
    now.texts.push(...laid.row.texts);
    now.lines.push(...laid.row.lines);
    drawn.push(...laid.intervals);
    return [laid.row];
  });
  return rows.flatMap((row) => [...row.strokes.flatMap((stroke) => drawStroke(stroke, now.texts, unit)), ...row.prims]);
}

/** A line stops short of every text and mark that it would cross. */
function drawStroke({ line, width, subject }: Stroke, texts: readonly Box[], unit: number): Prim[] {
  const pen = createPen('dimensions', subject);
  const plan = (p: Point) => scale(p, unit);
  return cutLine(line, texts, 0.3).map(({ a, b }) => pen.line([plan(a), plan(b)], { stroke: 'second', width }));
}

/** The rows that lie outside the last one of their side. */
function beyond(request: DimensionRequest, outermost: ReadonlyMap<string, number>): DimensionRequest {
  const last = request.side === undefined ? undefined : outermost.get(request.side);
  if (last === undefined) return request;
  const rows = request.rows.filter((row) => row.across >= last + DIMENSION.step * 0.9);
  const least = Math.min(...rows.map((row) => row.cost));
  return { ...request, rows: rows.map((row) => ({ ...row, cost: row.cost - least })) };
}

/** What a span measures, whatever line it stands on. */
interface Interval {
  x: number;
  y: number;
  from: number;
  to: number;
}

function chooseRow(request: DimensionRequest, unit: number, ground: Ground, drawn: readonly Interval[]) {
  let best: { row: LaidRow; intervals: Interval[]; across: number } | null = null;
  for (const candidate of request.rows) {
    if (best !== null && candidate.cost >= best.row.cost) continue;
    const spans = candidate.spans.filter((span) => !isDrawn(intervalOf(candidate, span), drawn));
    if (spans.length === 0) return null;
    const row = layRow({ ...candidate, spans }, unit, ground);
    if (best === null || row.cost < best.row.cost)
      best = { row, across: candidate.across, intervals: spans.map((span) => intervalOf(candidate, span)) };
  }
  const isWorth = best !== null && best.row.prims.length > 0 && best.row.cost <= (request.worth ?? Number.POSITIVE_INFINITY);
  return isWorth ? best : null;
}

function intervalOf({ axis }: DimensionRow, span: DimensionRow['spans'][number]): Interval {
  const isForward = axis.x > 1e-6 || (Math.abs(axis.x) <= 1e-6 && axis.y > 0);
  const [x, y] = isForward ? [axis.x, axis.y] : [-axis.x, -axis.y];
  const [from = 0, to = 0] = [span.from, span.to].map(({ point }) => dot(point, { x, y })).toSorted((a, b) => a - b);
  return { x, y, from, to };
}

const isDrawn = (a: Interval, drawn: readonly Interval[]) =>
  drawn.some((b) => Math.abs(a.x - b.x) + Math.abs(a.y - b.y) < 1e-3 && Math.abs(a.from - b.from) < 2 && Math.abs(a.to - b.to) < 2);
