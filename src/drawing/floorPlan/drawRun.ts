import { add, along, angleOf, distance, dot, type Point, type Point3, rightOf, scale } from '../../geometry';
import type { PlacedRun } from '../../scene';
import type { Drawing, Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen, type Pen } from '../support/pen';
import { direction } from '../support/vec';

/** A run in plan: its two edges in long dashes about a centre line, a mitre at each elbow, rings where it rises, the fan, an arrow at the outlet. */
export function drawRun(placed: PlacedRun): Drawing {
  const pen = createPen('run', placed.run.id);
  const radius = placed.run.diameter / 2;
  const path = flattenPath(placed.points);
  return [
    ...drawDuct(pen, path, radius),
    ...drawRises(pen, placed.points, radius),
    ...drawFan(pen, placed, radius),
    ...drawOutlet(pen, placed, path, radius),
  ];
}

/** The way on the plan, without the stretches that only rise. */
export function flattenPath(points: readonly Point3[]): Point[] {
  const path: Point[] = [];
  for (const { x, y } of points) {
    const last = path.at(-1);
    if (last === undefined || distance(last, { x, y }) > 1) path.push({ x, y });
  }
  return path;
}

function drawDuct(pen: Pen, path: readonly Point[], radius: number): Prim[] {
  if (path.length < 2) return [];
  const left = offsetPath(path, -radius);
  const right = offsetPath(path, radius);
  const elbows = path
    .slice(1, -1)
    .map((_, i) => pen.line([left[i + 1] ?? ORIGIN, right[i + 1] ?? ORIGIN], { stroke: 'air', width: WIDTH.narrow }));
  const edge = { stroke: 'air', width: WIDTH.wide, dash: 'long' } as const;
  return [
    pen.area([...left, ...right.toReversed()], { fill: 'air', fillOpacity: 0.06 }),
    pen.line(left, edge),
    pen.line(right, edge),
    pen.line(path, { stroke: 'air', width: WIDTH.fine, dash: 'dash-dot' }),
    ...elbows,
  ];
}

/** A path moved sideways, its corners mitred (no further than twice the offset). */
function offsetPath(path: readonly Point[], offset: number): Point[] {
  return path.map((p, i) => {
    const before = i === 0 ? direction(p, path[1] ?? p) : direction(path[i - 1] ?? p, p);
    const after = i === path.length - 1 ? before : direction(p, path[i + 1] ?? p);
    const [n, m] = [rightOf(before), rightOf(after)];
    const share = Math.max(0.5, 1 + dot(n, m));
    return add(p, scale(add(n, m), offset / share));
  });
}

/** Where the run rises or drops: the duct's own round, with a cross. */
function drawRises(pen: Pen, points: readonly Point3[], radius: number): Prim[] {
  return points.slice(1).flatMap((b, i) => {
    const a = points[i] ?? b;
    if (distance(a, b) > 1 || Math.abs(b.z - a.z) < 1) return [];
    return [
      pen.circle(b, radius, { stroke: 'air', width: WIDTH.wide, fill: 'paper' }),
      pen.line([along(b, DIAGONAL, -radius), along(b, DIAGONAL, radius)], { stroke: 'air', width: WIDTH.fine }),
      pen.line([along(b, rightOf(DIAGONAL), -radius), along(b, rightOf(DIAGONAL), radius)], { stroke: 'air', width: WIDTH.fine }),
    ];
  });
}

/** A fan: a casing wider than the duct with a wedge that points with the air. */
function drawFan(pen: Pen, { fan, points }: PlacedRun, radius: number): Prim[] {
  if (fan === null) return [];
  const heading = headingAt(points, fan.point);
  const casing = radius * 1.55;
  const wedge = [
    along(fan.point, heading, casing * 0.82),
    ...[-1, 1].map((side) => along(along(fan.point, heading, -casing * 0.55), rightOf(heading), side * casing * 0.48)),
  ];
  return [
    pen.circle(fan.point, casing, { stroke: 'air', width: WIDTH.heavy, fill: 'paper' }),
    pen.area(wedge, { stroke: 'air', width: WIDTH.narrow, fill: 'air', fillOpacity: 0.2 }),
  ];
}

/** The level direction of the run near a point; to the right where it only rises. */
function headingAt(points: readonly Point3[], at: Point): Point {
  const legs = points.slice(1).map((b, i) => [points[i] ?? b, b] as const);
  const level = legs.filter(([a, b]) => distance(a, b) > 1);
  const near = level.toSorted(([a, b], [c, d]) => distanceToLeg(at, a, b) - distanceToLeg(at, c, d))[0];
  return near === undefined ? { x: 1, y: 0 } : direction(near[0], near[1]);
}

function distanceToLeg(p: Point, a: Point, b: Point): number {
  const d = direction(a, b);
  const t = Math.max(0, Math.min(distance(a, b), dot({ x: p.x - a.x, y: p.y - a.y }, d)));
  return distance(p, along(a, d, t));
}

/** Through a wall: an arrow that goes on; through the roof: a ring with a dot. */
function drawOutlet(pen: Pen, { run }: PlacedRun, path: readonly Point[], radius: number): Prim[] {
  const [a, b] = [path.at(-2), path.at(-1)];
  if (b === undefined) return [];
  if (run.outlet === 'roof' || a === undefined) {
    return [pen.circle(b, radius * 1.25, { stroke: 'air', width: WIDTH.heavy, fill: 'paper' }), pen.symbol(b, 'dot', 1.6, { fill: 'air' })];
  }
  const heading = direction(a, b);
  const tip = along(b, heading, radius * 2.4);
  return [
    pen.line([b, tip], { stroke: 'air', width: WIDTH.wide }),
    pen.symbol(along(b, heading, radius * 2.6), 'arrow', 3.4, { fill: 'air', angleDeg: angleOf(heading) }),
  ];
}

const ORIGIN: Point = { x: 0, y: 0 };
const DIAGONAL: Point = { x: Math.SQRT1_2, y: Math.SQRT1_2 };
