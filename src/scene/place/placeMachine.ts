import { type DataSheet, SIDES, type Side } from '../../catalog';
import { along, type Frame, orient, type Point3, type Polygon, rectangle, rotate, toWorld } from '../../geometry';
import type { Machine } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedMachine, PlacedSide, Solid, Wall } from '../types';
import { createSolid } from './createSolid';
import { placeControls } from './placeControls';
import { placeSide } from './placeSide';

/** Ids of the tables joined at each side. */
export type TableAtSide = Record<Side, string | null>;

/** A machine in the room: sides, controls, connections, and the room that its doors and its service need. */
export const placeMachine = memoizeByIdentity(
  (machine: Machine, sheet: DataSheet, at: number, walls: readonly Wall[], tables: TableAtSide): PlacedMachine => {
    const frame = frameOf(machine, sheet);
    const footprint = rectangle(frame, 0, 0, sheet.width, sheet.depth);
    const side = (name: Side) => placeSide(name, sheet, frame, walls, tables[name]);
    const sides = { left: side('left'), right: side('right'), front: side('front'), back: side('back') };
    const connections = sheet.connections.map((connection) => ({ connection, point: placePoint(frame, connection) }));
    return {
      at,
      machine,
      sheet,
      frame,
      footprint,
      sides,
      controls: placeControls(machine.controls, sheet, sides),
      connections,
      collar: connections.find(({ connection }) => connection.kind === 'collar')?.point ?? null,
      doorLift: placeDoorLift(machine, sheet, footprint),
      serviceZones: placeServiceZones(sheet, sides),
    };
  },
);

/** The plan holds the centre of the footprint; the frame begins at its back left corner. */
function frameOf({ x, y, rotationDeg }: Machine, { width, depth }: DataSheet): Frame {
  const toCorner = rotate({ x: -width / 2, y: -depth / 2 }, rotationDeg);
  return { origin: { x: x + toCorner.x, y: y + toCorner.y }, rotationDeg };
}

function placePoint(frame: Frame, local: Point3): Point3 {
  const { x, y } = toWorld(frame, local);
  return { x, y, z: local.z };
}

const placeDoorLift = (machine: Machine, sheet: DataSheet, footprint: Polygon): Solid =>
  createSolid({
    owner: machine.id,
    kind: 'door-lift',
    pieces: [footprint],
    zFrom: sheet.height,
    zTo: Math.max(sheet.height, sheet.doorLiftHeight),
  });

function placeServiceZones({ clearances }: DataSheet, sides: Record<Side, PlacedSide>): PlacedMachine['serviceZones'] {
  return SIDES.filter((side) => sides[side].table === null && clearances[side] > 0).map((side) => {
    const { edge, normal } = sides[side];
    const depth = clearances[side];
    return { side, depth, polygon: orient([edge.a, edge.b, along(edge.b, normal, depth), along(edge.a, normal, depth)]) };
  });
}
