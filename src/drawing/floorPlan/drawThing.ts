import { add, type Point, rightOf, scale } from '../../geometry';
import type { PlacedThing } from '../../scene';
import type { Drawing, Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen, type Pen } from '../support/pen';
import { rectangleAt } from '../support/vec';

/** A free-standing thing: its outline and a symbol of its kind. */
export function drawThing(placed: PlacedThing): Drawing {
  const pen = createPen('equipment', placed.thing.id);
  const body = pen.area(placed.polygon, { fill: 'paper', stroke: 'ink', width: WIDTH.wide });
  const ware = placed.thing.ware === 'none' ? [] : [drawWare(pen, placed, placed.thing.ware)];
  return [body, ...ware, ...drawSymbol(pen, createPlacer(placed))];
}

/** What it holds, in the same pattern as the tables. */
function drawWare(pen: Pen, { polygon }: PlacedThing, ware: 'soiled' | 'clean'): Prim {
  return pen.area(polygon, { fill: ware, pattern: ware === 'soiled' ? 'hatch-45' : 'dots' });
}

/** The thing's own frame: its middle, x to the right for a person who faces its front, y toward that person. */
interface Placer {
  kind: PlacedThing['thing']['kind'];
  width: number;
  depth: number;
  at: (x: number, y: number) => Point;
  box: (x: number, y: number, width: number, depth: number) => Point[];
}

function createPlacer({ thing, front }: PlacedThing): Placer {
  const x = scale(rightOf(front), -1);
  const at = (dx: number, dy: number) => add({ x: thing.x, y: thing.y }, add(scale(x, dx), scale(front, dy)));
  return {
    kind: thing.kind,
    width: thing.width,
    depth: thing.depth,
    at,
    box: (dx, dy, width, depth) => rectangleAt(at(dx, dy), x, width, depth),
  };
}

const FINE = { stroke: 'second', width: WIDTH.narrow } as const;

function drawSymbol(pen: Pen, placer: Placer): Prim[] {
  switch (placer.kind) {
    case 'three-compartment-sink':
      return drawThreeBowls(pen, placer);
    case 'hand-sink':
      return drawHandSink(pen, placer);
    case 'shelving':
      return drawShelving(pen, placer);
    case 'cart':
      return drawCart(pen, placer);
    case 'bin':
      return drawBin(pen, placer);
    case 'work-table':
      return [pen.area(placer.box(0, 0, placer.width - 60, placer.depth - 60), { ...FINE, pattern: 'none' })];
    case 'panel-board':
      return drawPanelBoard(pen, placer);
    case 'other':
      return [];
  }
}

/** Three bowls between two drainboards, whose grooves run to the bowls. */
function drawThreeBowls(pen: Pen, { width, depth, at, box }: Placer): Prim[] {
  const bowl = Math.min((width * 0.62) / 3, depth * 1.1);
  const board = (width - 3 * bowl) / 2;
  const bowls = [-1, 0, 1].flatMap((i) => [
    pen.area(box(i * bowl, 0, bowl - 40, depth - 130), { stroke: 'ink', width: WIDTH.medium, fill: 'water', fillOpacity: 0.07 }),
    pen.circle(at(i * bowl, 0), 35, { stroke: 'water', width: WIDTH.narrow }),
  ]);
  const groove = (side: number, y: number) =>
    pen.line([at((side * (width - board * 0.4)) / 2, y), at((side * (3 * bowl + board * 0.4)) / 2, y)], {
      stroke: 'second',
      width: WIDTH.fine,
    });
  const grooves = board < 120 ? [] : [-1, 1].flatMap((side) => [-0.25, -0.08, 0.08, 0.25].map((k) => groove(side, k * depth)));
  return [...bowls, ...grooves];
}

function drawHandSink(pen: Pen, { width, depth, at }: Placer): Prim[] {
  const radius = Math.min(width, depth) * 0.34;
  return [
    pen.circle(at(0, depth * 0.06), radius, { stroke: 'ink', width: WIDTH.medium, fill: 'water', fillOpacity: 0.07 }),
    pen.circle(at(0, depth * 0.06), 20, { stroke: 'water', width: WIDTH.narrow }),
    pen.line([at(0, -depth * 0.46), at(0, -depth * 0.16)], { stroke: 'water', width: WIDTH.medium }),
  ];
}

/** Shelves seen from above: one diagonal a bay, uprights at the corners. */
function drawShelving(pen: Pen, { width, depth, at, box }: Placer): Prim[] {
  const bays = Math.max(1, Math.round(width / 1200));
  const bay = width / bays;
  const edges = Array.from({ length: bays + 1 }, (_, i) => -width / 2 + i * bay);
  const diagonals = edges.slice(0, -1).map((x) => pen.line([at(x, depth / 2), at(x + bay, -depth / 2)], FINE));
  const inset = Math.min(22, width / 8, depth / 8);
  const ends = (x: number) => Math.max(-width / 2 + inset, Math.min(width / 2 - inset, x));
  const posts = edges.flatMap((x) => [-1, 1].map((side) => pen.area(box(ends(x), side * (depth / 2 - inset), 28, 28), { fill: 'ink' })));
  return [...diagonals, ...posts];
}

/** Castors at the corners and a handle at the back. */
function drawCart(pen: Pen, { width, depth, at }: Placer): Prim[] {
  const castors = [-1, 1].flatMap((i) => [-1, 1].map((j) => pen.circle(at(i * (width / 2 - 60), j * (depth / 2 - 60)), 32, FINE)));
  const handle = pen.line([at(-width * 0.32, depth / 2 - 22), at(width * 0.32, depth / 2 - 22)], { stroke: 'ink', width: WIDTH.heavy });
  return [...castors, handle];
}

function drawBin(pen: Pen, { width, depth, at }: Placer): Prim[] {
  const radius = Math.min(width, depth) / 2;
  return [pen.circle(at(0, 0), radius * 0.9, FINE), pen.circle(at(0, 0), radius * 0.72, { ...FINE, width: WIDTH.fine })];
}

/** Half filled, as electrical drawings show a distribution board. */
function drawPanelBoard(pen: Pen, { width, depth, at }: Placer): Prim[] {
  const half = [at(-width / 2, -depth / 2), at(width / 2, -depth / 2), at(-width / 2, depth / 2)];
  return [pen.area(half, { fill: 'power' })];
}
