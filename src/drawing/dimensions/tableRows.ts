import { dot, leftOf, type Point, rightOf } from '../../geometry';
import type { PlacedTable, Scene } from '../../scene';
import type { Formatter } from '../../units';
import { placeAcross } from '../floorPlan/drawTable';
import { direction } from '../support/vec';
import { figures } from './figures';
import type { DimensionRequest, DimensionRow, Span } from './types';

/** Length of each leg and the depth of each table, beside the table or on its deck. What the wall's chain tells already is not told again. */
export function createTableRows(scene: Scene, f: Formatter, unit: number): DimensionRequest[] {
  return scene.tables.flatMap((table, index) => [
    ...table.table.legs.map((_, leg) => createLegRequest(table, index, leg, f, unit)),
    createDepthRequest(table, index, f, unit),
  ]);
}

/** Outside the operator's edge, then outside the back edge, then on the deck. */
function createLegRequest(table: PlacedTable, index: number, leg: number, f: Formatter, unit: number): DimensionRequest {
  const [a, b] = [table.path[leg] ?? ORIGIN, table.path[leg + 1] ?? ORIGIN];
  const d = direction(a, b);
  const toOperator = table.table.operatorSide === 'right' ? rightOf(d) : leftOf(d);
  const edge = table.table.rackLineFromEdge;
  const back = edge - table.table.depth;
  const length = table.table.legs[leg]?.length ?? 0;
  const span: Span = {
    from: { point: a, lift: 0 },
    to: { point: b, lift: 0 },
    text: figures(f, length),
    edit: ['tables', index, 'legs', leg, 'length'],
    subject: table.table.id,
  };
  const places = [
    { offset: edge + 6 * unit, lift: edge, cost: 0 },
    { offset: edge + 11 * unit, lift: edge, cost: 1.5 },
    { offset: edge + 16 * unit, lift: edge, cost: 3 },
    { offset: back - 6 * unit, lift: -back, cost: 1 },
    { offset: back - 11 * unit, lift: -back, cost: 2 },
    { offset: (edge + 254) / 2, lift: 0, cost: 9 },
  ];
  return { rows: places.map((place) => createRow(d, toOperator, a, span, place, unit)) };
}

/** Across the far end, beyond it; or on its leg of the deck. */
function createDepthRequest(table: PlacedTable, index: number, f: Formatter, unit: number): DimensionRequest {
  const edge = table.table.rackLineFromEdge;
  const [front, back] = [placeAcross(table, table.length, edge), placeAcross(table, table.length, edge - table.table.depth)];
  const axis = direction(back, front);
  const outward = table.path.length < 2 ? table.heading : direction(table.path.at(-2) ?? ORIGIN, table.path.at(-1) ?? ORIGIN);
  const span: Span = {
    from: { point: back, lift: 0 },
    to: { point: front, lift: 0 },
    text: figures(f, table.table.depth),
    edit: ['tables', index, 'depth'],
    subject: table.table.id,
  };
  const offsets = [6, 11, -4, -9, -15, -22, -30, -38];
  const leg = table.table.legs.at(-1)?.length ?? 0;
  const places = offsets
    .map((offset, i) => ({ offset: offset * unit, lift: 0, cost: offset > 0 ? i : 1 + i * 0.3 }))
    .filter(({ offset }) => offset > -leg);
  return { rows: places.map((place) => createRow(axis, outward, front, span, place, unit)) };
}

/** A row along `axis`, `offset` plan mm from a point of it toward `away`. */
export function createRow(
  axis: Point,
  away: Point,
  from: Point,
  span: Span,
  place: { offset: number; lift: number; cost: number },
  unit: number,
): DimensionRow {
  const n = rightOf(axis);
  const across = (dot(from, n) + dot(away, n) * place.offset) / unit;
  const { lift } = place;
  const lifted = Object.assign({}, span, { from: { point: span.from.point, lift }, to: { point: span.to.point, lift } });
  return { axis, spans: [lifted], across, cost: place.cost };
}

const ORIGIN: Point = { x: 0, y: 0 };
