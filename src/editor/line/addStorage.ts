import { along, angleOf, directionOf, normalizeDeg, type Point, rightOf, scale } from '../../geometry';
import { addThing, createId, type Plan, UNKNOWN_THING } from '../../plan';
import { deriveScene, type PlacedTable } from '../../scene';
import { nodesOf, startOf } from '../snap/box';
import { THING_SIZES } from '../tools/thingSizes';
import { type CommandResult, carryOut, refusal } from './commandResult';

/** Free floor between the end of the clean table and its shelving, mm. */
const GAP = 150;

/** Puts clean shelving beyond the end of the line's clean table, its back in line with the table's back edge. */
export function addStorage(plan: Plan, machine: string): CommandResult {
  const line = deriveScene(plan).lines.find((item) => item.machine.machine.id === machine);
  if (line?.clean == null) return refusal('Storage follows the clean table. Add a clean landing first.');
  const id = createId(plan, 'shelving');
  const size = THING_SIZES.shelving;
  const { point, rotationDeg } = placeBeyond(plan, line.clean, size);
  const thing = { id, kind: 'shelving' as const, name: '', x: point.x, y: point.y, rotationDeg, ...size, ...UNKNOWN_THING };
  return carryOut(plan, 'Add storage', addThing(thing), [id]);
}

function placeBeyond(
  plan: Plan,
  { table }: PlacedTable,
  { width, depth }: { width: number; depth: number },
): { point: Point; rotationDeg: number } {
  const end = nodesOf(table, startOf(plan, table)).at(-1);
  const from = end?.point ?? { x: 0, y: 0 };
  const headingDeg = end?.headingDeg ?? 0;
  const out = directionOf(headingDeg);
  const toOperator = scale(rightOf(out), table.operatorSide === 'right' ? 1 : -1);
  const back = -(table.depth - table.rackLineFromEdge);
  const point = along(along(from, out, GAP + width / 2), toOperator, back + depth / 2);
  // At rotation 0 a front looks down the paper, 90° from the direction to the right.
  return { point, rotationDeg: normalizeDeg(angleOf(toOperator) - 90) };
}
