import { along, type Point, rayToSegment, scale } from '../../geometry';
import type { Column } from '../../plan';
import type { Scene } from '../../scene';
import type { Formatter } from '../../units';
import { figures } from './figures';
import { rowThrough } from './machineRows';
import type { RoomSide } from './sidesOfRoom';
import type { DimensionRequest } from './types';

/** Columns, set out by their centres: from the nearer wall along both main directions of the room. (Drains and stubs belong to a rough-in plan.) */
export function createColumnRows(scene: Scene, sides: readonly RoomSide[], f: Formatter, unit: number): DimensionRequest[] {
  return scene.room.columns.flatMap(({ column }) => mainDirections(sides).flatMap((d) => createRequest(scene, column, d, f, unit)));
}

/** One direction of each two opposite main sides. */
function mainDirections(sides: readonly RoomSide[]): Point[] {
  const found: Point[] = [];
  for (const { outward, isMain } of sides) {
    const isTold = found.some((d) => Math.abs(d.x * outward.y - d.y * outward.x) < 1e-3);
    if (isMain && !isTold) found.push(outward);
  }
  return found;
}

/** None for a column that stands against a wall in this direction. */
function createRequest(scene: Scene, column: Column, d: Point, f: Formatter, unit: number): DimensionRequest[] {
  const centre = { x: column.x, y: column.y };
  const leastReach = Math.max(column.width, column.depth);
  const reaches = [d, scale(d, -1)].flatMap((way) => {
    const reach = distanceToWall(scene, centre, way);
    return reach === null ? [] : [{ way, reach }];
  });
  if (reaches.some(({ reach }) => reach < leastReach)) return [];
  const rows = reaches
    .toSorted((a, b) => a.reach - b.reach)
    .map(({ way, reach }, i) => {
      const wall = along(centre, way, reach);
      const span = { from: { point: wall, lift: 0 }, to: { point: centre, lift: 0 }, text: figures(f, reach), subject: column.id };
      return rowThrough(span, way, i * 2, unit);
    });
  return rows.length === 0 ? [] : [{ worth: 8, rows }];
}

function distanceToWall({ room }: Scene, from: Point, d: Point): number | null {
  const hits = room.walls.flatMap((wall) => rayToSegment(from, d, wall) ?? []);
  return hits.length === 0 ? null : Math.min(...hits);
}
