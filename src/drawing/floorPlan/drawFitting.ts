import { along, distance, midpoint, offsetConvex, type Point } from '../../geometry';
import type { PlacedFitting, PlacedTable } from '../../scene';
import type { Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { direction } from '../support/vec';

/** A fitting of a table: each kind has a plan symbol of its own. */
export function drawFitting({ table }: PlacedTable, placed: PlacedFitting): Prim[] {
  switch (placed.fitting.kind) {
    case 'sink':
      return drawSink(placed, placed.fitting.spray);
    case 'scrap':
      return drawScrap(placed);
    case 'drop-off':
      return drawDropOff(placed, table.role);
    case 'landing':
      return drawLanding(placed, table.role);
    case 'overshelf':
      return drawOvershelf(placed);
  }
}

/** A bowl with its outlet; a spray hose over it is a dashed ring with the hose's arm. */
function drawSink({ fitting, polygon, centre }: PlacedFitting, spray: boolean): Prim[] {
  const pen = createPen('equipment', fitting.id);
  const inner = offsetConvex(polygon, -35);
  const hose = [
    pen.circle(centre, 120, { stroke: 'water', width: WIDTH.narrow, dash: 'dotted' }),
    pen.line([midpoint(polygon[0] ?? centre, polygon[1] ?? centre), centre], { stroke: 'water', width: WIDTH.medium }),
  ];
  return [
    pen.area(polygon, { fill: 'paper', stroke: 'ink', width: WIDTH.wide }),
    pen.area(inner, { stroke: 'water', width: WIDTH.narrow, fill: 'water', fillOpacity: 0.07 }),
    ...(spray ? hose : []),
    pen.circle(centre, 38, { stroke: 'water', width: WIDTH.narrow, fill: 'paper' }),
    pen.symbol(centre, 'dot', 0.6, { fill: 'water' }),
  ];
}

/** An opening to a bin or trough below: the hole and its far edges. */
function drawScrap({ fitting, polygon, centre }: PlacedFitting): Prim[] {
  const pen = createPen('equipment', fitting.id);
  const [a = centre, b = centre, c = centre, d = centre] = polygon;
  const radius = Math.min(distance(a, b), distance(b, c)) * 0.32;
  return [
    pen.area(polygon, { fill: 'paper', stroke: 'ink', width: WIDTH.medium }),
    pen.line([a, c], { stroke: 'second', width: WIDTH.fine }),
    pen.line([b, d], { stroke: 'second', width: WIDTH.fine }),
    pen.circle(centre, radius, { fill: 'ink', fillOpacity: 0.82 }),
  ];
}

/** Where trays and tubs are set down: a free stretch of deck within a broken outline. */
function drawDropOff({ fitting, polygon }: PlacedFitting, role: 'soiled' | 'clean'): Prim[] {
  const pen = createPen('equipment', fitting.id);
  return [pen.area(offsetConvex(polygon, -30), { fill: 'paper', fillOpacity: 0.72, stroke: role, width: WIDTH.narrow, dash: 'short' })];
}

/** A stretch kept free for racks: its four corners. */
function drawLanding({ fitting, polygon, centre }: PlacedFitting, role: 'soiled' | 'clean'): Prim[] {
  const pen = createPen('equipment', fitting.id);
  const [a = centre, b = centre, c = centre, d = centre] = offsetConvex(polygon, -14);
  const ink = { stroke: role, width: WIDTH.narrow } as const;
  const lip = 70;
  const corner = (p: Point, q: Point, r: Point) => pen.line([along(p, direction(p, q), lip), p, along(p, direction(p, r), lip)], ink);
  return [corner(a, b, d), corner(b, c, a), corner(c, d, b), corner(d, a, c)];
}

/** A shelf overhead is above the cut: dashed. */
function drawOvershelf({ fitting, polygon }: PlacedFitting): Prim[] {
  return [createPen('above', fitting.id).area(polygon, { stroke: 'ink', width: WIDTH.medium, dash: 'short', pattern: 'none' })];
}
