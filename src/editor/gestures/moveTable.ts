import { sub } from '../../geometry';
import { freeTable, joinTable, type Recipe, type Table } from '../../plan';
import type { Scene } from '../../scene';
import { nounOf } from '../lists/names';
import { reverseTable } from '../moves/reverseTable';
import { distancesAround } from '../snap/around';
import { moveBox, nodesOf, startOf, type TableStartFrame, tableBoxes } from '../snap/box';
import { findCatch, isHeld, type TableEnd } from '../snap/joint';
import { snapBoxes } from '../snap/snapBoxes';
import type { Hold } from './gesture';
import { targetsBeside } from './moveThings';
import type { Pull, Solution } from './solution';

/**
 * Drags one table. A door holds its end until it is pulled off far enough; then it goes free, and the
 * next door that comes near catches it: flush, centred and square.
 */
export function solveTableMove(pull: Pull, table: Table): Solution {
  const { scene, aim } = pull;
  const start = startOf(scene.plan, table);
  const by = sub(pull.to, pull.from);
  const moved = { x: start.x + by.x, y: start.y + by.y, headingDeg: start.headingDeg };
  const hold = holdOf(pull, table, moved);
  if (hold !== null) return { ...joinBy(scene, table, hold), hold };
  const targets = targetsBeside(scene, [table.id]);
  const boxes = tableBoxes(table, moved);
  const snapped = aim.isFree ? { by: { x: 0, y: 0 }, guides: [] } : snapBoxes(boxes, targets, aim);
  const at = { x: moved.x + snapped.by.x, y: moved.y + snapped.by.y };
  const [first] = boxes;
  return {
    label: `Move ${nounOf(scene.plan, table.id)}`,
    recipe: placeFree(table.id, { ...at, headingDeg: start.headingDeg }),
    guides: snapped.guides,
    readouts: first === undefined ? [] : distancesAround(moveBox(first, snapped.by), targets),
    hold: null,
  };
}

/** The door that holds the table after this move: the one before while it is near, else the one that catches an end. */
function holdOf({ scene, hold, aim }: Pull, table: Table, moved: TableStartFrame): Hold | null {
  if (aim.isFree) return null;
  const ends = endsOf(table, moved);
  const held = hold === null ? undefined : ends.find(({ reversed }) => reversed === hold.reversed);
  if (hold !== null && held !== undefined && isHeld(scene, table.id, hold, held.point)) return hold;
  return findCatch(scene, table.id, table.place.kind === 'joined' ? ends.slice(0, 1) : ends);
}

/** Both ends of a table, each with the direction in which the table leaves it. */
export function endsOf(table: Table, start: TableStartFrame): TableEnd[] {
  const last = nodesOf(table, start).at(-1);
  const near = { point: { x: start.x, y: start.y }, headingDeg: start.headingDeg, reversed: false };
  return last === undefined ? [near] : [near, { point: last.point, headingDeg: last.headingDeg + 180, reversed: true }];
}

/** Joins a table to the door that holds it. The door that it is joined to already keeps its gap as it was surveyed. */
export function joinBy(scene: Scene, table: Table, hold: Hold): Solution {
  const { place } = table;
  const isSame = place.kind === 'joined' && place.machine === hold.machine && place.side === hold.side;
  const side = scene.machines.find(({ machine }) => machine.id === hold.machine)?.sides[hold.side];
  const recipe: Recipe = (draft) => {
    if (isSame) return;
    if (hold.reversed) turnRound(table)(draft);
    joinTable(table.id, hold.machine, hold.side)(draft);
  };
  return {
    label: `Join ${nounOf(scene.plan, table.id)}`,
    recipe,
    guides: side === undefined ? [] : [{ kind: 'joint', from: side.edge.a, to: side.edge.b }],
    readouts: [],
  };
}

/** Lets a free table be walked from its other end. */
export function turnRound(table: Table): Recipe {
  return (draft) => {
    const index = draft.tables.findIndex(({ id }) => id === table.id);
    if (index >= 0) Object.assign(draft.tables[index] as Table, reverseTable(table));
  };
}

function placeFree(id: string, place: TableStartFrame): Recipe {
  return (draft) => {
    freeTable(id)(draft);
    const item = draft.tables.find((table) => table.id === id);
    if (item?.place.kind === 'free') Object.assign(item.place, place);
  };
}
