import type { DataSheet } from '../../catalog';
import type { Point } from '../../geometry';
import type { Opening, Room } from '../planSchema';
import type { LineConfiguration, LineSide } from './lineSides';
import { LINE_WASTE } from './lineSite';
import { CLEAN_LENGTH, RACK_LINE_FROM_EDGE, SOILED_LENGTH, TABLE_DEPTH } from './lineTables';

/** Shelving for clean ware, 48 × 18 in, beyond the clean table. */
export const SHELF_WIDTH = 1220;
export const SHELF_DEPTH = 457;
export const SHELF_GAP = 80;

const TABLE_TO_WALL = 5;
const SERVICE_TO_WALL = 20;
/** Free floor beyond the drop-off, beyond the shelving, and before a straight line. */
const APPROACH = 1050;
const BEYOND_SHELF = 300;
const BEFORE_LINE = 2300;
export const DOOR_WIDTH = 914;
/** From the end of its wall to the door. */
export const DOOR_INSET = 250;

/** Walls around a line, in the machine's frame (origin at the back left corner of its footprint). */
export interface LineBox {
  left: number;
  right: number;
  back: number;
  front: number;
}

/** Walls tight behind the tables, and floor to walk on everywhere else. */
export function lineBox(configuration: LineConfiguration, soiled: LineSide, sheet: DataSheet): LineBox {
  const reach = (side: LineSide['side']) =>
    side === soiled.side ? SOILED_LENGTH + APPROACH : CLEAN_LENGTH + SHELF_GAP + SHELF_WIDTH + BEYOND_SHELF;
  const behind = TABLE_DEPTH - RACK_LINE_FROM_EDGE + TABLE_TO_WALL;
  const front = sheet.rackLine.front;
  const closedLeft = Math.min(front - behind, -sheet.clearances.left - SERVICE_TO_WALL);
  const closedRight = Math.max(front + behind, sheet.width + sheet.clearances.right + SERVICE_TO_WALL);
  const rackLine = Math.min(sheet.rackLine.left, sheet.rackLine.right);
  return {
    left: configuration === 'right-front' ? closedLeft : -reach('left'),
    right: configuration === 'left-front' ? closedRight : sheet.width + reach('right'),
    back: Math.min(rackLine - behind, -sheet.clearances.back - SERVICE_TO_WALL / 2),
    front: sheet.depth + (configuration === 'straight' ? BEFORE_LINE : reach('front')),
  };
}

/** The room: four walls, a door in the wall opposite the machine's back, a drain and stubs near the machine. */
export function createLineRoom(box: LineBox, soiled: LineSide, sheet: DataSheet): Room {
  return {
    name: 'Dish room',
    outline: [
      { id: 'wall-back', x: box.left, y: box.back },
      { id: 'wall-right', x: box.right, y: box.back },
      { id: 'wall-front', x: box.right, y: box.front },
      { id: 'wall-left', x: box.left, y: box.front },
    ],
    ceilingHeight: 3000,
    northDeg: 0,
    openings: [createDoor(box, soiled)],
    columns: [],
    floorDrains: [{ id: 'floor-drain', kind: 'floor-sink', ...drainPlace(soiled, sheet), size: 305, waste: LINE_WASTE }],
    stubs: createStubs(box, sheet),
  };
}

/** People come in near the end of the soiled table; the leaf opens outward, its latch away from the corner of the room. */
function createDoor(box: LineBox, soiled: LineSide): Opening {
  const length = box.right - box.left;
  const along = { left: length - DOOR_WIDTH - DOOR_INSET, right: DOOR_INSET, front: length / 2 - DOOR_WIDTH / 2 }[soiled.side];
  return {
    id: 'door',
    kind: 'door',
    wall: 'wall-front',
    from: along,
    width: DOOR_WIDTH,
    height: 2032,
    sill: 0,
    swing: 'out',
    hinge: soiled.side === 'left' ? 'end' : 'start',
  };
}

/** Under the soiled table, within 5 ft of the machine's drain. */
function drainPlace(soiled: LineSide, sheet: DataSheet): Point {
  if (soiled.side === 'front') return { x: sheet.rackLine.front, y: sheet.depth + 300 };
  return { x: soiled.side === 'left' ? -300 : sheet.width + 300, y: 200 };
}

/** Roughed in at the back wall, behind the machine. */
function createStubs(box: LineBox, sheet: DataSheet): Room['stubs'] {
  return [
    { id: 'cold-water-stub', kind: 'cold-water', x: sheet.width - 60, y: box.back, z: 450 },
    { id: 'hot-water-stub', kind: 'hot-water', x: sheet.width - 160, y: box.back, z: 450 },
    { id: 'power-stub', kind: 'power', x: sheet.width / 2, y: box.back, z: 1200 },
    ...(sheet.vent.kind === 'direct' ? [{ id: 'duct-stub', kind: 'duct-exit' as const, x: sheet.width / 2, y: box.back, z: 2600 }] : []),
  ];
}
