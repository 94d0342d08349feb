import type { Corner, Opening, Room } from './planSchema';

/**
 * The room with x for −x. Its corners are listed the other way round, so that it stays on the same hand of its walls;
 * every wall keeps its id and runs the other way, so what is measured along it is measured from its other end.
 */
export function mirrorRoom(room: Room): Room {
  const flip = <T extends { x: number }>(item: T): T => ({ ...item, x: 0 - item.x });
  return {
    ...room,
    outline: mirrorOutline(room.outline),
    northDeg: 0 - room.northDeg,
    openings: room.openings.map((opening) => mirrorOpening(opening, wallLength(room.outline, opening.wall))),
    columns: room.columns.map((column) => ({ ...flip(column), rotationDeg: 0 - column.rotationDeg })),
    floorDrains: room.floorDrains.map(flip),
    stubs: room.stubs.map(flip),
  };
}

/** Length of the wall that begins at a corner; 0 when there is no such corner. */
export function wallLength(outline: readonly Corner[], wall: string): number {
  const index = outline.findIndex((corner) => corner.id === wall);
  const from = outline[index];
  const to = outline[(index + 1) % outline.length];
  return from === undefined || to === undefined ? 0 : Math.hypot(to.x - from.x, to.y - from.y);
}

function mirrorOutline(outline: readonly Corner[]): Corner[] {
  const ends = outline.map((corner, index) => ({ id: corner.id, end: outline[(index + 1) % outline.length] ?? corner }));
  return ends.map(({ id, end }) => ({ id, x: 0 - end.x, y: end.y })).reverse();
}

function mirrorOpening(opening: Opening, length: number): Opening {
  return { ...opening, from: Math.max(0, length - opening.from - opening.width), hinge: opening.hinge === 'start' ? 'end' : 'start' };
}
