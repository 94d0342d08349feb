import type { Prim } from '../drawing';
import { drawRow } from './drawRow';
import { type Ground, type LaidRow, layRow } from './layRow';
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
    if (request.side !== undefined) outermost.set(request.side, laid.row.across);
    for (const place of laid.places) if (place !== null) now.texts.push(place.box);
    now.lines.push(...laid.lines);
    drawn.push(...laid.row.spans.map((span) => intervalOf(laid.row, span)));
    return [laid];
  });
  return rows.flatMap((row) => drawRow(row, now.texts, unit));
}

/** The rows that lie outside the last one of their side. */
function beyond(request: DimensionRequest, outermost: ReadonlyMap<string, number>): DimensionRequest {
  const last = request.side === undefined ? undefined : outermost.get(request.side);
  if (last === undefined) return request;
  const rows = request.rows.filter((row) => row.across >= last + DIMENSION.step * 0.9);
  const least = Math.min(...rows.map((row) => row.cost));
  return Object.assign({}, request, { rows: rows.map(({ axis, spans, across, cost }) => ({ axis, spans, across, cost: cost - least })) });
}

/** What a span measures, whatever line it stands on. */
interface Interval {
  x: number;
  y: number;
  from: number;
  to: number;
}

function chooseRow(request: DimensionRequest, unit: number, ground: Ground, drawn: readonly Interval[]): LaidRow | null {
  let best: LaidRow | null = null;
  let limit = (request.worth ?? Number.MAX_VALUE) + 1e-9;
  for (const candidate of request.rows) {
    if (candidate.cost >= limit) continue;
    const spans = candidate.spans.filter((span) => !isDrawn(intervalOf(candidate, span), drawn));
    if (spans.length === 0) return null;
    const { axis, across, cost } = candidate;
    const row = layRow({ axis, spans, across, cost }, unit, ground, limit);
    if (row === null) continue;
    best = row;
    limit = row.cost;
  }
  return best?.places.some((place) => place !== null) === true ? best : null;
}

function intervalOf({ axis }: DimensionRow, span: DimensionRow['spans'][number]): Interval {
  const isForward = axis.x > 1e-6 || (Math.abs(axis.x) <= 1e-6 && axis.y > 0);
  const x = isForward ? axis.x : -axis.x;
  const y = isForward ? axis.y : -axis.y;
  const a = span.from.point.x * x + span.from.point.y * y;
  const b = span.to.point.x * x + span.to.point.y * y;
  return { x, y, from: Math.min(a, b), to: Math.max(a, b) };
}

const isDrawn = (a: Interval, drawn: readonly Interval[]) =>
  drawn.some((b) => Math.abs(a.x - b.x) + Math.abs(a.y - b.y) < 1e-3 && Math.abs(a.from - b.from) < 2 && Math.abs(a.to - b.to) < 2);
