import { angleOf, differenceDeg, distance, type Point } from '../../geometry';
import type { PlacedSide, Scene } from '../../scene';
import type { Hold } from '../gestures/gesture';

/** A table's end is caught by a door this near, mm, and heading out of it within this angle. */
export const CATCH_WITHIN = 150;
export const CATCH_ANGLE_DEG = 30;

/** A joined table comes off its door when it is pulled farther than this, mm. */
export const RELEASE_BEYOND = 250;

/** An end of a table's rack centre line and the direction in which the table leaves it. */
export interface TableEnd {
  readonly point: Point;
  readonly headingDeg: number;
  readonly reversed: boolean;
}

/** The door that catches one of the ends, the nearest first; null where none is near or all are taken. */
export function findCatch(scene: Scene, table: string | null, ends: readonly TableEnd[]): Hold | null {
  const doors = doorsOf(scene, table);
  const pairs = ends.flatMap((end) => doors.map((door) => ({ end, door, away: distance(end.point, door.point) })));
  const near = pairs.filter(({ end, door, away }) => away <= CATCH_WITHIN && isHeadingOut(end, door.side));
  const best = near.sort((a, b) => a.away - b.away)[0];
  return best === undefined ? null : { machine: best.door.machine, side: best.door.side.side, reversed: best.end.reversed };
}

/** Whether a table's end is still near enough to the door that holds it. */
export function isHeld(scene: Scene, table: string, hold: Hold, end: Point): boolean {
  const door = doorsOf(scene, table).find(({ machine, side }) => machine === hold.machine && side.side === hold.side);
  return door !== undefined && distance(door.point, end) <= RELEASE_BEYOND;
}

interface Door {
  machine: string;
  side: PlacedSide;
  point: Point;
}

/** Doors without a table, or with the given table. */
function doorsOf(scene: Scene, table: string | null): Door[] {
  return scene.machines.flatMap(({ machine, sides }) =>
    Object.values(sides).flatMap((side) => {
      const isFree = side.table === null || side.table === table;
      return side.door === null || !isFree ? [] : [{ machine: machine.id, side, point: side.door }];
    }),
  );
}

const isHeadingOut = ({ headingDeg }: TableEnd, { normal }: PlacedSide) =>
  Math.abs(differenceDeg(headingDeg, angleOf(normal))) <= CATCH_ANGLE_DEG;
