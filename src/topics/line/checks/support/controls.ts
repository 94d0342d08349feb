import { dot, type Point, type Polygon, sub } from '../../../../geometry';
import { setControls } from '../../../../plan';
import { deriveAfter, holdsAtMost as isAtMost, type Repair, TOLERANCE } from '../../../../rules';
import type { Inside, Line, PlacedControls, PlacedMachine, Scene } from '../../../../scene';
import { measureCover } from './cover';

/** Reach of the 5th-percentile woman from a wall to the tip of her finger. */
export const SHORT_REACH = 677;

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
export function moveControls(scene: Scene, { machine: { machine, sheet } }: Pick<Line, 'machine'>): Repair[] {
  const others = sheet.controls.filter((position) => position.id !== machine.controls);
  const where = sheet.controlsChange === 'on-site' ? 'on site' : 'in the order';
  return others
    .map((position) => ({
      id: `controls-${position.id}`,
      label: () => `Move the controls ${where}: ${position.name.charAt(0).toLowerCase()}${position.name.slice(1)}`,
      edit: setControls(machine.id, position.id),
    }))
    .filter((repair) => isUsable(deriveAfter(scene, repair.edit), machine.id));
}

function isUsable({ lines, tables }: Scene, machine: string): boolean {
  const line = lines.find((item) => item.machine.machine.id === machine);
  if (line === undefined || line.inside === null || line.machine.controls === null) return false;
  const { controls } = line.machine;
  const isCovered = tables.some((table) => measureCover(table, line.machine, controls) > 0);
  return !isCovered && isInsideTurn(line.machine, controls, line.inside) && line.stand !== null && isAtMost(line.stand.reach, SHORT_REACH);
}
