import type { ControlsPosition, DataSheet } from '../../../../catalog';
import { dot, type Point, type Polygon, sub } from '../../../../geometry';
import { setControls } from '../../../../plan';
import { createMessages, deriveAfter, holdsAtMost as isAtMost, type Offer, type Repair, TOLERANCE } from '../../../../rules';
import type { Inside, Line, PlacedControls, PlacedMachine, Scene } from '../../../../scene';
import { measureCover } from './cover';

/** Reach of the 5th-percentile woman from a wall to the tip of her finger. */
export const SHORT_REACH = 677;

/** `position`: its name on the data sheet. */
export interface MoveControlsMessages {
  'repair/move-controls': { position: string; change: DataSheet['controlsChange'] };
}

const say = createMessages<MoveControlsMessages>();

/** Whether controls sit at the inside of the turn and look into it or along its edge. */
export const isInsideTurn = (machine: PlacedMachine, controls: PlacedControls, inside: Inside): boolean =>
  isAtTurn(machine, controls, inside) && looksInside(controls, inside);

/** Whether the footprint corner nearest to the controls is the one that both sides share; for straight-through, one of the front's. */
function isAtTurn({ footprint }: PlacedMachine, { centre }: PlacedControls, { corner, normals }: Inside): boolean {
  const nearest = nearestCorner(footprint, centre);
  return normals.every((normal) => dot(sub(nearest, corner), normal) >= -TOLERANCE);
}

const looksInside = (controls: PlacedControls, { normals }: Inside) =>
  normals.every((normal) => dot(controls.normal, normal) >= -TOLERANCE);

const nearestCorner = (footprint: Polygon, { x, y }: Point): Point =>
  footprint.reduce((best, p) => (Math.hypot(p.x - x, p.y - y) < Math.hypot(best.x - x, best.y - y) ? p : best));

/** Other positions on the data sheet where the controls would be inside the turn, free of tables and in reach. */
export const offerToMoveControls = (scene: Scene, line: Pick<Line, 'machine'>): Offer => ({
  ids: otherPositions(line.machine).map(repairId),
  find: () => moveControls(scene, line),
});

export function moveControls(scene: Scene, { machine: placed }: Pick<Line, 'machine'>): Repair[] {
  const { machine, sheet } = placed;
  return otherPositions(placed)
    .map((position) => ({
      id: repairId(position),
      label: say('repair/move-controls', { position: position.name, change: sheet.controlsChange }),
      edit: setControls(machine.id, position.id),
    }))
    .filter((repair) => isUsable(deriveAfter(scene, repair.edit), machine.id));
}

const otherPositions = ({ machine, sheet }: PlacedMachine) => sheet.controls.filter((position) => position.id !== machine.controls);

const repairId = ({ id }: ControlsPosition) => `controls-${id}`;

function isUsable({ lines, tables }: Scene, machine: string): boolean {
  const line = lines.find((item) => item.machine.machine.id === machine);
  if (line === undefined || line.inside === null || line.machine.controls === null) return false;
  const { controls } = line.machine;
  const isCovered = tables.some((table) => measureCover(table, line.machine, controls) > 0);
  return !isCovered && isInsideTurn(line.machine, controls, line.inside) && line.stand !== null && isAtMost(line.stand.reach, SHORT_REACH);
}
