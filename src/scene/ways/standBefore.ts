import {
  along,
  type Body,
  containsPoint,
  leftOf,
  type Point,
  type Polygon,
  pointAt,
  projectOnPath,
  rightOf,
  scale,
  signedDistance,
  squareToBounds,
  wallBodies,
} from '../../geometry';
import type { PlacedTable, PlacedThing, Station } from '../types';

/** The room as a person meets it who looks for a place to stand. */
export interface Floor {
  outline: Polygon;
  bodies: readonly Body[];
}

/** Walls count as bodies. */
export const createFloor = (outline: Polygon, obstacles: readonly Body[]): Floor => ({
  outline,
  bodies: [...wallBodies(outline), ...obstacles],
});

/** An edge that a person works at, and the way out of it to where people stand. */
interface Edge {
  at: Point;
  out: Point;
}

/** How close two clearances count as equal. */
const CLOSE = 1e-7;
const STEPS = 40;

/** The roomiest place before a stretch of a table's operator edge: its middle, or where the middle is taken a quarter to either side. */
export function standAtTable(floor: Floor, { table, path, length }: PlacedTable, station: Station, wanted: number): Point | null {
  if (station.place === null) return null;
  const middle = projectOnPath(path, station.place).s;
  const quarter = (station.length ?? 0) / 4;
  return roomiest(floor, wanted, [middle, middle - quarter, middle + quarter], (s) => {
    const { point, direction } = pointAt(path, Math.min(length, Math.max(0, s)));
    const out = table.operatorSide === 'left' ? leftOf(direction) : rightOf(direction);
    return { at: along(point, out, table.rackLineFromEdge), out };
  });
}

/** The roomiest place before a thing's front; a cart and a work table are reached from any side. */
export function standAtThing(floor: Floor, { thing, front }: PlacedThing, wanted: number): Point {
  const side = rightOf(front);
  const isRound = thing.kind === 'cart' || thing.kind === 'work-table';
  const ways = isRound ? [front, scale(front, -1), side, scale(side, -1)] : [front];
  return roomiest(floor, wanted, ways, (out) => ({
    at: along(thing, out, (out === front || out === ways[1] ? thing.depth : thing.width) / 2),
    out,
  })) as Point;
}

function roomiest<T>(floor: Floor, wanted: number, choices: readonly T[], edgeOf: (choice: T) => Edge): Point | null {
  let best: Stand | null = null;
  for (const choice of choices) {
    const found = stepOut(floor, edgeOf(choice), wanted / 2);
    best = best === null ? found : roomier(best, found);
    if (best.clearance >= wanted / 2 - CLOSE) break;
  }
  return best?.point ?? null;
}

/**
 * Steps out from an edge as far as is wanted, and farther by what juts out of the edge; where that is too near to what stands
 * behind, back to where both are equally far off. What stands behind comes no faster than the person goes, so half of what is
 * missing is always a step back to the right side.
 */
function stepOut(floor: Floor, { at, out }: Edge, wanted: number): Stand {
  const standAt = (step: number): Stand => {
    const point = along(at, out, step);
    return { point, clearance: clearanceAt(floor, point) };
  };
  let best = standAt(wanted);
  if (best.clearance >= wanted - CLOSE) return best;
  best = roomier(best, standAt(2 * wanted - best.clearance));
  let step = wanted;
  for (let i = 0; i < STEPS && best.clearance < wanted - CLOSE; i++) {
    const now = standAt(step);
    best = roomier(best, now);
    if (now.clearance >= step - CLOSE) break;
    step = (step + now.clearance) / 2;
  }
  return best;
}

interface Stand {
  point: Point;
  clearance: number;
}

const roomier = (one: Stand, other: Stand): Stand => (other.clearance > one.clearance + CLOSE ? other : one);

/** From a place to what stands nearest, walls among them; 0 in something or out of the room. Boxes are looked at before bodies. */
export function clearanceAt({ outline, bodies }: Floor, p: Point): number {
  if (!containsPoint(outline, p)) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const { polygon, bounds } of bodies) {
    if (squareToBounds(bounds, p) >= least * least) continue;
    least = Math.min(least, signedDistance(polygon, p));
    if (least <= 0) return 0;
  }
  return least;
}
