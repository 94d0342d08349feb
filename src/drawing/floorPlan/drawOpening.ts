import { along, angleOf, distance, midpoint, type Point, scale } from '../../geometry';
import type { PlacedOpening } from '../../scene';
import type { Prim } from '../drawing';
import { WALL_THICKNESS, WIDTH } from '../support/ink';
import { createPen, type Pen } from '../support/pen';

const LEAF_THICKNESS = 40;

/** An opening in a wall, drawn as ISO 128 drawings of buildings do: a leaf with the arc of its swing, panes, or a head overhead. */
export function drawOpening(placed: PlacedOpening): Prim[] {
  const pen = createPen('room', placed.opening.id);
  switch (placed.opening.kind) {
    case 'door':
      return [...drawHead(pen, placed), ...drawSingleLeaf(pen, placed)];
    case 'double-door':
      return [...drawHead(pen, placed), ...drawTwoLeaves(pen, placed)];
    case 'cased-opening':
      return drawHead(pen, placed);
    case 'pass-window':
      return [...drawSill(pen, placed), ...drawShelf(pen, placed)];
    case 'window':
      return [...drawSill(pen, placed), ...drawPane(pen, placed)];
  }
}

/** The wall goes on above: its two faces, dashed. */
function drawHead(pen: Pen, placed: PlacedOpening): Prim[] {
  return faces(placed).map((face) => pen.line(face, { stroke: 'second', width: WIDTH.narrow, dash: 'short' }));
}

/** The wall goes on below: its two faces, and the cut through its ends. */
function drawSill(pen: Pen, placed: PlacedOpening): Prim[] {
  return faces(placed).map((face) => pen.line(face, { stroke: 'ink', width: WIDTH.narrow }));
}

function drawPane(pen: Pen, { segment, wall }: PlacedOpening): Prim[] {
  const pane = [segment.a, segment.b].map((p) => along(p, wall.inward, -WALL_THICKNESS / 2));
  return [pen.line(pane, { stroke: 'ink', width: WIDTH.wide })];
}

/** A pass-window has a shelf on both faces. */
function drawShelf(pen: Pen, { segment, wall }: PlacedOpening): Prim[] {
  const corner = (p: Point, offset: number) => along(p, wall.inward, offset);
  const [near, far] = [120, -WALL_THICKNESS - 120];
  const ring = [corner(segment.a, near), corner(segment.b, near), corner(segment.b, far), corner(segment.a, far)];
  return [pen.line([...ring, ...ring.slice(0, 1)], { stroke: 'second', width: WIDTH.narrow })];
}

function faces({ segment, wall }: PlacedOpening): Point[][] {
  const back = (p: Point) => along(p, wall.inward, -WALL_THICKNESS);
  return [
    [segment.a, segment.b],
    [back(segment.a), back(segment.b)],
  ];
}

function drawSingleLeaf(pen: Pen, placed: PlacedOpening): Prim[] {
  const { segment, opening } = placed;
  const [hinge, latch] = opening.hinge === 'start' ? [segment.a, segment.b] : [segment.b, segment.a];
  return drawLeaf(pen, placed, hinge, latch);
}

function drawTwoLeaves(pen: Pen, placed: PlacedOpening): Prim[] {
  const { a, b } = placed.segment;
  const middle = midpoint(a, b);
  return [...drawLeaf(pen, placed, a, middle), ...drawLeaf(pen, placed, b, middle)];
}

/** A leaf standing open at a right angle, hung at the face it opens to, and the arc back to where it shuts. */
function drawLeaf(pen: Pen, { wall, opening }: PlacedOpening, hinge: Point, latch: Point): Prim[] {
  if (opening.swing === 'none')
    return [
      pen.line(
        [hinge, latch].map((p) => along(p, wall.inward, -WALL_THICKNESS / 2)),
        { stroke: 'ink', width: WIDTH.wide },
      ),
    ];
  const isIn = opening.swing === 'in';
  const open = isIn ? wall.inward : scale(wall.inward, -1);
  const face = (p: Point) => (isIn ? p : along(p, wall.inward, -WALL_THICKNESS));
  const [pivot, end] = [face(hinge), face(latch)];
  const width = distance(pivot, end);
  const shut = { x: (end.x - pivot.x) / width, y: (end.y - pivot.y) / width };
  const tip = along(pivot, open, width);
  const leaf = [pivot, tip, along(tip, shut, LEAF_THICKNESS), along(pivot, shut, LEAF_THICKNESS)];
  const isClockwise = shut.x * open.y - shut.y * open.x > 0;
  const from = angleOf(isClockwise ? shut : open);
  return [
    pen.arc(pivot, width, from, from + 90, { stroke: 'second', width: WIDTH.narrow }),
    pen.area(leaf, { stroke: 'ink', width: WIDTH.medium, fill: 'paper' }),
  ];
}
