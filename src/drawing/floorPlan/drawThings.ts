import { memoizeByIdentity, type Scene } from '../../scene';
import type { Drawing } from '../drawing';
import { drawHood } from './drawHood';
import { drawMachine } from './drawMachine';
import { drawRoom } from './drawRoom';
import { drawRun } from './drawRun';
import { drawSupplies } from './drawSupplies';
import { drawTable } from './drawTable';
import { drawThing } from './drawThing';
import { drawWays } from './drawWays';

/**
 * What stands and hangs in the room, back to front, without a word about it: things, tables, machines, ways, what hangs above.
 * Each thing's part is kept while the scene keeps the thing, so a drag draws anew only what moves.
 */
export function drawThings(scene: Scene): Drawing {
  const { rackSize, rackPitch } = scene.plan.settings;
  return [
    ...room(scene.room),
    ...scene.things.flatMap((placed) => thing(placed)),
    ...scene.tables.flatMap((placed) => table(placed, rackSize, rackPitch)),
    ...scene.machines.flatMap((placed) => machine(placed, rackSize)),
    ...supplies(scene.machines, scene.room),
    ...scene.lines.flatMap((line) => ways(line)),
    ...scene.hoods.flatMap((placed) => hood(placed)),
    ...scene.runs.flatMap((placed) => run(placed)),
  ];
}

const room = memoizeByIdentity(drawRoom);
const thing = memoizeByIdentity(drawThing);
const table = memoizeByIdentity(drawTable);
const machine = memoizeByIdentity(drawMachine);
const supplies = memoizeByIdentity(drawSupplies);
const ways = memoizeByIdentity(drawWays);
const hood = memoizeByIdentity(drawHood);
const run = memoizeByIdentity(drawRun);
