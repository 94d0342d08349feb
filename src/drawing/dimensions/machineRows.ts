import { along, dot, midpoint, type Point, type Polygon, rightOf, scale } from '../../geometry';
import type { PlacedHood, PlacedMachine, PlacedSide, Scene } from '../../scene';
import type { Formatter } from '../../units';
import { direction } from '../support/vec';
import { figures } from './figures';
import { createRow } from './tableRows';
import type { DimensionRequest, DimensionRow, Span } from './types';

/** Farther than this from a wall, a machine stands free: the distance is none that one would set out. */
const FAR = 2500;

/** A machine's distance from the walls it stands by, its footprint, and how far a hood reaches past it. */
export function createMachineRows(scene: Scene, f: Formatter, unit: number): DimensionRequest[] {
  return scene.machines.flatMap((machine) => [
    ...Object.values(machine.sides).flatMap((side) => createOffsetRequests(machine, side, f, unit)),
    ...createFootprintRequests(machine, f, unit),
    ...scene.hoods.flatMap((hood) => createOverhangRequests(machine, hood, f, unit)),
  ]);
}

/** From a side without a table to the wall that it faces. */
function createOffsetRequests({ machine }: PlacedMachine, side: PlacedSide, f: Formatter, unit: number): DimensionRequest[] {
  const { wallDistance, table, normal, edge } = side;
  if (table !== null || wallDistance === null || wallDistance < 20 || wallDistance > FAR || side.side === 'front') return [];
  const at = (share: number): Span => {
    const from = along(edge.a, direction(edge.a, edge.b), share * Math.hypot(edge.b.x - edge.a.x, edge.b.y - edge.a.y));
    return {
      from: { point: from, lift: 0 },
      to: { point: along(from, normal, wallDistance), lift: 0 },
      text: figures(f, wallDistance),
      subject: machine.id,
    };
  };
  const shares = [0.5, 0.7, 0.3, 0.88, 0.12];
  return [{ worth: 14, rows: shares.map((share, i) => rowThrough(at(share), normal, i, unit)) }];
}

/** Width along the back, depth along a side; beyond the footprint, or over it where there is no room. */
function createFootprintRequests({ machine, sheet, sides }: PlacedMachine, f: Formatter, unit: number): DimensionRequest[] {
  const width = sizeSpan(sides.back.edge.a, sides.back.edge.b, sheet.width, machine.id, f);
  const shut = [sides.right, sides.left].find((side) => side.table === null) ?? sides.right;
  const depth = sizeSpan(shut.edge.a, shut.edge.b, sheet.depth, machine.id, f);
  const request = (span: Span, side: PlacedSide): DimensionRequest => ({
    worth: 7,
    rows: [5, 10, -3.2].map((offset, i) =>
      createRow(direction(side.edge.a, side.edge.b), side.normal, side.centre, span, { offset: offset * unit, lift: 0, cost: i * 3 }, unit),
    ),
  });
  return [request(width, sides.back), request(depth, shut)];
}

const sizeSpan = (a: Point, b: Point, length: number, subject: string, f: Formatter): Span => ({
  from: { point: a, lift: 0 },
  to: { point: b, lift: 0 },
  text: figures(f, length),
  subject,
});

/** From each open side of the machine to the hood's lip. */
function createOverhangRequests(
  machine: PlacedMachine,
  { hood, polygon, covers }: PlacedHood,
  f: Formatter,
  unit: number,
): DimensionRequest[] {
  const cover = covers.find((item) => item.machine === machine.machine.id);
  if (cover === undefined) return [];
  const open = Object.values(machine.sides).filter((side) => !side.isAgainstWall && Math.abs(cover.overhang[side.side]) >= 20);
  return open.map((side) => {
    const overhang = cover.overhang[side.side];
    const length = Math.hypot(side.edge.b.x - side.edge.a.x, side.edge.b.y - side.edge.a.y);
    const rows = [0.04, 0.96, 0.2, 0.8, 0.5].map((share, i) => {
      const from = along(side.edge.a, direction(side.edge.a, side.edge.b), share * length);
      const span: Span = {
        from: { point: from, lift: 0 },
        to: { point: along(from, side.normal, overhang), lift: 0 },
        text: figures(f, Math.abs(overhang)),
        subject: hood.id,
      };
      return rowThrough(span, side.normal, 3 + i, unit);
    });
    return { worth: 14, rows: [...rowsBesideHood(machine, side, hood.id, polygon, overhang, f, unit), ...rows] };
  });
}

/** Beyond the hood's two edges that the overhang is square to, with extension lines from machine and lip. */
function rowsBesideHood(
  { footprint }: PlacedMachine,
  { centre, normal }: PlacedSide,
  subject: string,
  lip: Polygon,
  overhang: number,
  f: Formatter,
  unit: number,
): DimensionRow[] {
  const n = rightOf(normal);
  return [-1, 1].flatMap((way) => {
    const across = (points: Polygon) => Math.max(...points.map((p) => way * dot(p, n)));
    const at = (points: Polygon, t: number): Point => {
      const c = way * across(points);
      return { x: normal.x * t + n.x * c, y: normal.y * t + n.y * c };
    };
    const edge = dot(centre, normal);
    const [from, to] = [at(footprint, edge), at(lip, edge + overhang)];
    const span: Span = { from: { point: from, lift: 0 }, to: { point: to, lift: 0 }, text: figures(f, Math.abs(overhang)), subject };
    return [4, 8].map((offset, i) => createRow(normal, scale(n, way), to, span, { offset: offset * unit, lift: 0, cost: i * 1.5 }, unit));
  });
}

/** A row whose line runs through the measured points themselves. */
export function rowThrough(span: Span, axis: Point, cost: number, unit: number) {
  return createRow(axis, axis, midpoint(span.from.point, span.to.point), span, { offset: 0, lift: 0, cost }, unit);
}
