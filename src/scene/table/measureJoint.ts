import { cross, dot, nearestBetweenSegments, rightOf, type Segment, sub } from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import { rackPointOf } from '../place/placeSide';
import type { Joint, PlacedMachine, PlacedSide, PlacedTable } from '../types';

/**
 * How a joined table meets its machine side, measured from where both lie, whether good or bad.
 * null for a table that is not joined to this machine.
 */
export const measureJoint = memoizeByIdentity((table: PlacedTable, machine: PlacedMachine): Joint | null => {
  const { place } = table.table;
  const start = table.path[0];
  if (place.kind !== 'joined' || table.machine !== machine.machine.id || start === undefined) return null;
  const side = machine.sides[place.side];
  const { sheet, frame } = machine;
  const z = table.nodes[0]?.z ?? null;
  return {
    table: table.table.id,
    machine: machine.machine.id,
    side: side.side,
    point: start,
    // Flush is 0, never the minus zero of a projection.
    gap: measureGap(table, side) || 0,
    offset: dot(sub(start, rackPointOf(side.side, sheet, frame)), rightOf(side.normal)),
    angleDeg: (Math.abs(Math.atan2(cross(side.normal, table.heading), dot(side.normal, table.heading))) * 180) / Math.PI,
    deckStep: z === null ? null : z - sheet.deckHeight,
    hasDoor: side.door !== null,
  };
});

/**
 * From the table's end edge to the side, along the side's normal, least over the stretch where they
 * face each other; where they do not, the plain distance.
 */
function measureGap({ operatorEdge, backEdge }: PlacedTable, { edge, normal }: PlacedSide): number {
  const [a, b] = [operatorEdge[0], backEdge[0]];
  if (a === undefined || b === undefined) return Infinity;
  const faced = clipToSide({ a, b }, edge);
  if (faced === null) return nearestBetweenSegments({ a, b }, edge).distance;
  return Math.min(dot(sub(faced.a, edge.a), normal), dot(sub(faced.b, edge.a), normal));
}

/** The part of a segment that lies before the side, between the ends of its edge. */
function clipToSide({ a, b }: Segment, edge: Segment): Segment | null {
  const way = sub(edge.b, edge.a);
  const [u, v] = [a, b].map((p) => dot(sub(p, edge.a), way) / dot(way, way)) as [number, number];
  if (u === v) return u < 0 || u > 1 ? null : { a, b };
  const at = (place: number) => {
    const t = Math.max(0, Math.min(1, (place - u) / (v - u)));
    return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
  };
  return Math.max(u, v) < 0 || Math.min(u, v) > 1 ? null : { a: at(0), b: at(1) };
}

/** The joint of each table that stands at a machine. */
export const measureJoints = memoizeByIdentity((tables: readonly PlacedTable[], machines: readonly PlacedMachine[]): Joint[] =>
  tables.flatMap((table) => {
    const host = machines.find(({ machine }) => machine.id === table.machine);
    return host === undefined ? [] : (measureJoint(table, host) ?? []);
  }),
);
