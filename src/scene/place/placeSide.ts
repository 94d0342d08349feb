import type { DataSheet, Side } from '../../catalog';
import { directionToWorld, type Frame, midpoint, type Point, type Segment, toWorld } from '../../geometry';
import { measureWalls } from '../room/measureWalls';
import type { PlacedSide, Wall } from '../types';

/** A side is closed where a hood could not stand out by the 6 in that an open side needs (IMC 507.4.1 in 2015-2021). */
const CLOSED_WITHIN = 152.4;

/** One side of a machine: its edge, normal and door, and the wall before it. */
export function placeSide(side: Side, sheet: DataSheet, frame: Frame, walls: readonly Wall[], table: string | null): PlacedSide {
  const normal = directionToWorld(frame, LOCAL_NORMALS[side]);
  const edge = placeEdge(side, sheet, frame);
  const depth = (side === 'left' || side === 'right' ? sheet.width : sheet.depth) / 2;
  const wall = measureWalls(edge, normal, walls, CLOSED_WITHIN, depth);
  const hasDoor = side !== 'back' && sheet.doors.includes(side);
  return {
    side,
    normal,
    edge,
    centre: midpoint(edge.a, edge.b),
    door: hasDoor ? rackPointOf(side, sheet, frame) : null,
    isAgainstWall: wall.isClosed,
    wallDistance: wall.distance,
    table,
  };
}

/** Where the rack centre line passes a side, whether it has a door or not; the middle of the back, where none passes. */
export function rackPointOf(side: Side, { width, depth, rackLine }: DataSheet, frame: Frame): Point {
  const local: Record<Side, Point> = {
    left: { x: 0, y: rackLine.left },
    right: { x: width, y: rackLine.right },
    front: { x: rackLine.front, y: depth },
    back: { x: width / 2, y: 0 },
  };
  return toWorld(frame, local[side]);
}

const LOCAL_NORMALS: Record<Side, Point> = { left: { x: -1, y: 0 }, right: { x: 1, y: 0 }, front: { x: 0, y: 1 }, back: { x: 0, y: -1 } };

/** From the left end to the right end of a person who faces the side from outside. */
function placeEdge(side: Side, { width, depth }: DataSheet, frame: Frame): Segment {
  const local: Record<Side, [Point, Point]> = {
    left: [
      { x: 0, y: 0 },
      { x: 0, y: depth },
    ],
    right: [
      { x: width, y: depth },
      { x: width, y: 0 },
    ],
    front: [
      { x: 0, y: depth },
      { x: width, y: depth },
    ],
    back: [
      { x: width, y: 0 },
      { x: 0, y: 0 },
    ],
  };
  const [a, b] = local[side];
  return { a: toWorld(frame, a), b: toWorld(frame, b) };
}
