import type { DataSheet } from '../../catalog';
import { along, directionOf, type Point, type Strip, strip } from '../../geometry';
import { jointFrame, type Machine, type Table } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedTable } from '../types';
import { layTable } from './layTable';
import { placeFitting } from './placeFitting';

/**
 * A table, free in the room or at a machine side, which it then follows. null for a joined table
 * whose machine is gone; a valid plan holds none.
 */
export const placeTable = memoizeByIdentity((table: Table, machine: Machine | null, sheet: DataSheet | null): PlacedTable | null => {
  if (table.place.kind === 'free') return placeAt(table, table.place, null);
  if (machine === null || sheet === null) return null;
  return placeAt(table, jointFrame(machine, sheet, table.place.side, table.place), machine.id);
});

interface Start extends Point {
  headingDeg: number;
}

function placeAt(table: Table, start: Start, machine: string | null): PlacedTable {
  const laid = layTable(table);
  const path = layPath(table.legs, start);
  const { pieces, outline, left, right } = stripOf(table, path);
  return {
    path,
    heading: directionOf(start.headingDeg + (table.legs[0]?.turnDeg ?? 0)),
    deck: pieces,
    outline,
    operatorEdge: table.operatorSide === 'left' ? left : right,
    backEdge: table.operatorSide === 'left' ? right : left,
    ...laid,
    table,
    machine,
    fittings: laid.fittings.map((fitting) => placeFitting(fitting, table, path)),
  };
}

/** Leg after leg; each turn is made before its leg, clockwise on the paper. */
function layPath(legs: Table['legs'], { x, y, headingDeg }: Start): Point[] {
  const path: Point[] = [{ x, y }];
  let [at, heading] = [path[0] as Point, headingDeg];
  for (const { length, turnDeg } of legs) {
    heading += turnDeg;
    at = along(at, directionOf(heading), length);
    path.push(at);
  }
  return path;
}

/** The deck: so far from the rack line to the operator's edge, the rest of the depth to the back. */
function stripOf({ operatorSide, rackLineFromEdge, depth }: Table, path: Point[]): Strip {
  const toBack = depth - rackLineFromEdge;
  return operatorSide === 'left' ? strip(path, rackLineFromEdge, toBack) : strip(path, toBack, rackLineFromEdge);
}
