import type { ControlsPosition, DataSheet, Side } from '../catalog';

const SUFFIX = '-mirrored';

/** The data sheet of the machine seen in a mirror: left and right swapped. Its id says so; mirrored again it loses the mark. */
export function mirrorDataSheet(sheet: DataSheet): DataSheet {
  const flip = (x: number) => sheet.width - x;
  return {
    ...sheet,
    id: mirrorSheetId(sheet.id),
    doors: sheet.doors.map(mirrorSide),
    rackLine: { left: sheet.rackLine.right, right: sheet.rackLine.left, front: flip(sheet.rackLine.front) },
    controls: sheet.controls.map((position) => mirrorControls(position, sheet.width)),
    connections: sheet.connections.map((connection) => ({ ...connection, x: flip(connection.x) })),
    clearances: { ...sheet.clearances, left: sheet.clearances.right, right: sheet.clearances.left },
    vent: mirrorVent(sheet.vent, flip),
  };
}

/** Id of the mirrored sheet. */
export function mirrorSheetId(id: string): string {
  return id.endsWith(SUFFIX) ? id.slice(0, -SUFFIX.length) : `${id.slice(0, 64 - SUFFIX.length)}${SUFFIX}`;
}

/** Left for right and right for left. */
export function mirrorSide(side: Side): Side {
  if (side === 'left') return 'right';
  return side === 'right' ? 'left' : side;
}

function mirrorControls(position: ControlsPosition, width: number): ControlsPosition {
  const name = position.name.replaceAll(/left|right/gi, otherWord);
  if (position.side === 'left' || position.side === 'right') return { ...position, name, side: mirrorSide(position.side) };
  return { ...position, name, from: width - position.to, to: width - position.from };
}

function otherWord(word: string): string {
  const other = word.toLowerCase() === 'left' ? 'right' : 'left';
  return word.startsWith('l') || word.startsWith('r') ? other : other.charAt(0).toUpperCase() + other.slice(1);
}

function mirrorVent(vent: DataSheet['vent'], flip: (x: number) => number): DataSheet['vent'] {
  if (vent.kind !== 'recovery') return vent;
  return { ...vent, box: { ...vent.box, x: flip(vent.box.x + vent.box.width) } };
}
