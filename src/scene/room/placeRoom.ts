import { area, centredRectangle, orient, type Polygon } from '../../geometry';
import type { Column, FloorDrain, Room, Stub } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedRoom } from '../types';
import { placeOpening } from './placeOpening';
import { placeWalls } from './placeWalls';

/** The room with everything that is built into it. An opening whose wall is gone is left out. */
export const placeRoom = memoizeByIdentity((room: Room): PlacedRoom => {
  const walls = placeWalls(room.outline);
  const outline = placeOutline(room.outline);
  const openings = room.openings.flatMap((opening) => {
    const wall = walls.find(({ id }) => id === opening.wall);
    return wall === undefined ? [] : [placeOpening(opening, wall)];
  });
  return {
    outline,
    walls,
    openings,
    columns: room.columns.map((column) => placeColumn(column)),
    floorDrains: room.floorDrains.map((drain) => placeFloorDrain(drain)),
    stubs: room.stubs.map((stub) => placeStub(stub)),
    ceilingHeight: room.ceilingHeight,
    areaMm2: area(outline),
  };
});

const placeOutline = memoizeByIdentity((outline: Room['outline']): Polygon => orient(outline.map(({ x, y }) => ({ x, y }))));

const placeColumn = memoizeByIdentity((column: Column): PlacedRoom['columns'][number] => ({
  column,
  polygon: centredRectangle(column, column.rotationDeg, column.width, column.depth),
}));

const placeStub = memoizeByIdentity((stub: Stub): PlacedRoom['stubs'][number] => ({ stub, point: { x: stub.x, y: stub.y, z: stub.z } }));

/** A floor drain has a round grate, a floor sink a square one. */
const placeFloorDrain = memoizeByIdentity((drain: FloorDrain): PlacedRoom['floorDrains'][number] => {
  const centre = { x: drain.x, y: drain.y };
  return { drain, centre, polygon: GRATES[drain.kind](drain) };
});

const GRATES: Record<FloorDrain['kind'], (drain: FloorDrain) => Polygon> = {
  'floor-drain': ({ x, y, size }) => ROUND.map((unit) => ({ x: x + (unit.x * size) / 2, y: y + (unit.y * size) / 2 })),
  'floor-sink': (drain) => centredRectangle(drain, 0, drain.size, drain.size),
};

const CORNERS = 24;
const ROUND = Array.from({ length: CORNERS }, (_, i) => {
  const angle = (2 * Math.PI * i) / CORNERS;
  return { x: Math.cos(angle), y: Math.sin(angle) };
});
