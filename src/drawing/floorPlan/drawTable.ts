import { along, rightOf } from '../../geometry';
import type { PlacedTable } from '../../scene';
import type { Drawing, Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen, type Pen } from '../support/pen';
import { rectangleAt } from '../support/vec';
import { cornersOfPath, placeOnPath } from './alongPath';
import { drawFitting } from './drawFitting';

/** A table: deck with its pattern, backsplash, rack guides and rack places, fittings. */
export function drawTable(table: PlacedTable, rackSize: number, rackPitch: number): Drawing {
  const pen = createPen('equipment', table.table.id);
  const { role } = table.table;
  return [
    pen.area(table.outline, { fill: 'paper' }),
    pen.area(table.outline, { fill: role, pattern: role === 'soiled' ? 'hatch-45' : 'dots', stroke: role, width: WIDTH.heavy }),
    ...drawRackPlaces(pen, table, rackSize, rackPitch),
    ...drawBacksplash(pen, table),
    ...table.fittings.flatMap((placed) => drawFitting(table, placed)),
  ];
}

function drawBacksplash(pen: Pen, { table, backEdge }: PlacedTable): Prim[] {
  return table.backsplash > 0 ? [pen.line(backEdge, { stroke: table.role, width: WIDTH.bold * 1.4 })] : [];
}

/** The squares that racks can stand on, at their pitch from the joint outward, where deck is free and straight. */
function drawRackPlaces(pen: Pen, table: PlacedTable, rackSize: number, rackPitch: number): Prim[] {
  return freeStretches(table).flatMap(([from, to]) => {
    const count = Math.floor((to - from + 1) / rackPitch);
    const middles = Array.from({ length: count }, (_, i) => from + (i + 0.5) * rackPitch);
    return middles.map((s) => {
      const { point, heading } = placeOnPath(table.path, s);
      return pen.area(rectangleAt(point, heading, rackSize, rackSize), {
        fill: 'paper',
        fillOpacity: 0.72,
        stroke: 'second',
        width: WIDTH.fine,
      });
    });
  });
}

/** Deck between turns and the fittings that no rack can stand on, as distances from the joint. */
function freeStretches(table: PlacedTable): [number, number][] {
  const half = table.table.rackLineFromEdge;
  const turns = cornersOfPath(table.path).map((s): [number, number] => [s - half, s + half]);
  const taken = table.fittings
    .filter(({ fitting }) => fitting.kind !== 'landing' && fitting.kind !== 'overshelf')
    .map(({ from, to }): [number, number] => [from, to]);
  const stretches: [number, number][] = [];
  let start = 0;
  for (const [from, to] of [...turns, ...taken].sort((a, b) => a[0] - b[0])) {
    if (from > start) stretches.push([start, from]);
    start = Math.max(start, to);
  }
  if (start < table.length) stretches.push([start, table.length]);
  return stretches;
}

/** Across a table at a place along it: `offset` to the operator's side of the rack centre line. */
export function placeAcross({ path, table }: PlacedTable, s: number, offset: number) {
  const { point, heading } = placeOnPath(path, s);
  const side = table.operatorSide === 'right' ? 1 : -1;
  return along(point, rightOf(heading), side * offset);
}
