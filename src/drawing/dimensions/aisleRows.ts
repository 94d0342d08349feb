import { along, distance, leftOf, type Point, rayToSegment, rightOf } from '../../geometry';
import type { Line, PlacedTable, Scene } from '../../scene';
import type { Formatter } from '../../units';
import { direction } from '../support/vec';
import { figures } from './figures';
import { rowThrough } from './machineRows';
import type { DimensionRequest } from './types';

/** Wider than this it is no aisle. */
const WIDEST = 2400;
const NARROWEST = 100;

/** The aisle before a line: from the operator's edge of each table to what stands opposite. */
export function createAisleRows(scene: Scene, f: Formatter, unit: number): DimensionRequest[] {
  return scene.lines.flatMap((line) =>
    [line.soiled, line.clean].flatMap((table) => (table === null ? [] : createAisleRequest(scene, line, table, f, unit))),
  );
}

function createAisleRequest(scene: Scene, line: Line, table: PlacedTable, f: Formatter, unit: number): DimensionRequest[] {
  const [a, b] = [table.operatorEdge[0], table.operatorEdge[1]];
  if (a === undefined || b === undefined) return [];
  const d = direction(a, b);
  const out = table.table.operatorSide === 'right' ? rightOf(d) : leftOf(d);
  const own = new Set([table.table.id, line.machine.machine.id]);
  const rows = [0.62, 0.4, 0.8, 0.25].flatMap((share, i) => {
    const from = along(a, d, share * distance(a, b));
    const reach = castRay(scene, from, out, own);
    if (reach === null || reach > WIDEST || reach < NARROWEST) return [];
    const span = {
      from: { point: from, lift: 0 },
      to: { point: along(from, out, reach), lift: 0 },
      text: figures(f, reach),
      subject: table.table.id,
    };
    return [rowThrough(span, out, i * 1.5, unit)];
  });
  return rows.length === 0 ? [] : [{ worth: 9, rows }];
}

/** How far a ray on the floor goes until it meets a wall or a body that stands on the floor; null when it meets nothing. */
function castRay(scene: Scene, from: Point, d: Point, ignored: ReadonlySet<string>): number | null {
  const bodies = scene.solids.filter((solid) => solid.zFrom < 1500 && !ignored.has(solid.owner) && solid.kind !== 'door-lift');
  const edges = bodies.flatMap((solid) =>
    solid.pieces.flatMap((piece) => piece.map((a, i) => ({ a, b: piece[(i + 1) % piece.length] ?? a }))),
  );
  const hits = [...edges, ...scene.room.walls].flatMap((edge) => {
    const t = rayToSegment(from, d, edge);
    return t === null || t < 1 ? [] : [t];
  });
  return hits.length === 0 ? null : Math.min(...hits);
}
