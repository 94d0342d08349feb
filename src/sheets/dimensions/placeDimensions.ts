import { dot } from '../../geometry';
import type { Prim } from '../drawing';
import { type Ground, type LaidRow, layRow } from './layRow';
import type { DimensionRequest, DimensionRow } from './types';

/**
 * Places dimension lines one after the other, each where it costs least: no text ever covers another text or a mark.
 * A distance that stands on the drawing already is not drawn twice (ISO 129-1); figures without a free place are left out.
 */
export function placeDimensions(requests: readonly DimensionRequest[], unit: number, ground: Ground): Prim[] {
  const now: Ground = { texts: [...ground.texts], lines: [...ground.lines], bodies: [...ground.bodies] };
  const drawn: Interval[] = [];
  return requests.flatMap((request) => {
    const laid = chooseRow(request, unit, now, drawn);
    if (laid === null) return [];
    now.texts.push(...laid.row.texts);
    now.lines.push(...laid.row.lines);
    drawn.push(...laid.intervals);
    return laid.row.prims;
  });
}

/** What a span measures, whatever line it stands on. */
interface Interval {
  x: number;
  y: number;
  from: number;
  to: number;
}

function chooseRow(request: DimensionRequest, unit: number, ground: Ground, drawn: readonly Interval[]) {
  let best: { row: LaidRow; intervals: Interval[] } | null = null;
  for (const candidate of request.rows) {
    if (best !== null && candidate.cost >= best.row.cost) continue;
    const spans = candidate.spans.filter((span) => !isDrawn(intervalOf(candidate, span), drawn));
    if (spans.length === 0) return null;
    const row = layRow({ ...candidate, spans }, unit, ground);
    if (best === null || row.cost < best.row.cost) best = { row, intervals: spans.map((span) => intervalOf(candidate, span)) };
  }
  return best !== null && best.row.prims.length > 0 ? best : null;
}

function intervalOf({ axis }: DimensionRow, span: DimensionRow['spans'][number]): Interval {
  const isForward = axis.x > 1e-6 || (Math.abs(axis.x) <= 1e-6 && axis.y > 0);
  const [x, y] = isForward ? [axis.x, axis.y] : [-axis.x, -axis.y];
  const [from = 0, to = 0] = [span.from, span.to].map(({ point }) => dot(point, { x, y })).toSorted((a, b) => a - b);
  return { x, y, from, to };
}

const isDrawn = (a: Interval, drawn: readonly Interval[]) =>
  drawn.some((b) => Math.abs(a.x - b.x) + Math.abs(a.y - b.y) < 1e-3 && Math.abs(a.from - b.from) < 2 && Math.abs(a.to - b.to) < 2);
