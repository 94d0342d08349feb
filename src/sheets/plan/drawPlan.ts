import { memoizeByIdentity, type Scene } from '../../scene';
import type { Drawing } from '../drawing';
import { layLabels } from '../labels/layLabels';
import { drawHood } from './drawHood';
import { drawMachine } from './drawMachine';
import { drawRoom } from './drawRoom';
import { drawRun } from './drawRun';
import { drawSupplies } from './drawSupplies';
import { drawTable } from './drawTable';
import { drawThing } from './drawThing';
import { drawWays } from './drawWays';
import type { PlanOptions } from './planOptions';

/**
 * The plan in plan millimetres, back to front: room, things, tables, machines, ways, what hangs above, marks and notes.
 * Dimensions and findings are drawings of their own. Each thing's part is kept while the scene keeps the thing,
 * so a drag draws anew only what moves.
 */
export function drawPlan(scene: Scene, options: PlanOptions): Drawing {
  const { rackSize, rackPitch } = scene.plan.settings;
  return [
    ...room(scene.room),
    ...scene.things.flatMap((placed) => thing(placed)),
    ...scene.tables.flatMap((placed) => table(placed, rackSize, rackPitch)),
    ...scene.machines.flatMap((placed) => machine(placed, rackSize)),
    ...drawSupplies(scene),
    ...scene.lines.flatMap((line) => ways(line)),
    ...scene.hoods.flatMap((placed) => hood(placed)),
    ...scene.runs.flatMap((placed) => run(placed)),
    ...layLabels(scene, options).prims,
  ];
}

const room = memoizeByIdentity(drawRoom);
const thing = memoizeByIdentity(drawThing);
const table = memoizeByIdentity(drawTable);
const machine = memoizeByIdentity(drawMachine);
const ways = memoizeByIdentity(drawWays);
const hood = memoizeByIdentity(drawHood);
const run = memoizeByIdentity(drawRun);
