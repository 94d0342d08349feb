import { add, along, angleOf, distance, type Point, rightOf, scale } from '../../geometry';
import type { Line } from '../../scene';
import type { Drawing, Hue, Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen, type Pen } from '../support/pen';
import { direction } from '../support/vec';

/** Where people and racks go: the operator's standing place, the inside of the turn, and the ways of ware with their arrows. */
export function drawWays(line: Line): Drawing {
  const pen = createPen('path', line.machine.machine.id);
  return [
    ...drawInside(line),
    ...drawStand(pen, line),
    ...drawWay(pen, line.ways.soiled, 'soiled'),
    ...drawWay(pen, line.ways.rack, 'ink'),
    ...drawWay(pen, line.ways.clean, 'clean'),
  ];
}

/** A thin line with an arrow near the end of each longer stretch. */
function drawWay(pen: Pen, way: readonly Point[], hue: Hue): Prim[] {
  if (way.length < 2) return [];
  const arrows = way.slice(1).flatMap((b, i) => {
    const a = way[i] ?? b;
    return distance(a, b) < 250
      ? []
      : [pen.symbol(along(a, direction(a, b), distance(a, b) * 0.62), 'arrow', 2.2, { fill: hue, angleDeg: angleOf(direction(a, b)) })];
  });
  return [pen.line(way, { stroke: hue, width: WIDTH.medium }), ...arrows];
}

/** A person from above, facing the machine: shoulders and head. */
function drawStand(pen: Pen, { stand, machine }: Line): Prim[] {
  if (stand === null) return [];
  const facing = direction(stand.centre, { x: machine.machine.x, y: machine.machine.y });
  return [
    pen.circle(stand.centre, stand.width / 2, { stroke: 'second', width: WIDTH.fine, dash: 'dotted' }),
    pen.area(ellipse(stand.centre, rightOf(facing), 230, 125), { stroke: 'second', width: WIDTH.medium, fill: 'paper' }),
    pen.circle(along(stand.centre, facing, 25), 88, { stroke: 'second', width: WIDTH.medium, fill: 'paper' }),
  ];
}

function ellipse(centre: Point, d: Point, a: number, b: number): Point[] {
  const n = rightOf(d);
  return Array.from({ length: 32 }, (_, i) => {
    const angle = (i / 32) * 2 * Math.PI;
    return add(centre, add(scale(d, a * Math.cos(angle)), scale(n, b * Math.sin(angle))));
  });
}

/** The inside of a turn: a light quarter round from the corner that both tables share. */
function drawInside({ inside, machine }: Line): Prim[] {
  const [a, b] = inside?.normals ?? [];
  if (inside === null || a === undefined || b === undefined) return [];
  const pen = createPen('zones', machine.machine.id);
  const radius = 900;
  const isClockwise = a.x * b.y - a.y * b.x > 0;
  const from = angleOf(isClockwise ? a : b);
  return [pen.arc(inside.corner, radius, from, from + 90, { stroke: 'second', width: WIDTH.fine, dash: 'dotted' })];
}
