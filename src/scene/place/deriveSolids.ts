import { rectangle } from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import type { PlacedHood, PlacedMachine, PlacedRoom, Solid } from '../types';
import { createSolid } from './createSolid';

/** Bodies of a machine: its body, the room of its open doors, and the box that takes the heat back. */
export const deriveMachineSolids = memoizeByIdentity(({ machine, sheet, frame, footprint, doorLift }: PlacedMachine): Solid[] => {
  const owner = machine.id;
  const solids: Solid[] = [createSolid({ owner, kind: 'machine', pieces: [footprint], zFrom: 0, zTo: sheet.height })];
  if (doorLift.zTo > doorLift.zFrom) solids.push(doorLift);
  if (sheet.vent.kind === 'recovery') {
    const { x, y, width, depth, zFrom, zTo } = sheet.vent.box;
    solids.push(createSolid({ owner, kind: 'recovery-box', pieces: [rectangle(frame, x, y, x + width, y + depth)], zFrom, zTo }));
  }
  return solids;
});

/** A hood has no place in space while the height of its lip is not known. */
export const deriveHoodSolids = memoizeByIdentity(({ hood, polygon }: PlacedHood): Solid[] =>
  hood.lipHeight === null
    ? []
    : [createSolid({ owner: hood.id, kind: 'hood', pieces: [polygon], zFrom: hood.lipHeight, zTo: hood.lipHeight + hood.height })],
);

/** How high a column stands in a room whose ceiling is not known. */
const USUAL_CEILING = 3000;

export const deriveColumnSolids = memoizeByIdentity(({ columns, ceilingHeight }: PlacedRoom): Solid[] =>
  columns.map(({ column, polygon }) =>
    createSolid({ owner: column.id, kind: 'column', pieces: [polygon], zFrom: 0, zTo: ceilingHeight ?? USUAL_CEILING }),
  ),
);
