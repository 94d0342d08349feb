import { type Body, boundsOf, gather, isNearBounds } from '../geometry';
import { deriveLine, type Surroundings, type TableAtMachine } from './deriveLine';
import { STAND_WITHIN } from './deriveStand';
import { floorBodies } from './floorObstacles';
import { createListKeeper, memoizeByIdentity } from './memoizeByIdentity';
import type { Joint, Line, PlacedMachine, PlacedOpening, PlacedTable, PlacedThing, Scene } from './types';

/** What lines are derived from. */
export type LineSources = Pick<Scene, 'machines' | 'tables' | 'joints' | 'room' | 'things' | 'solids'> & {
  settings: Scene['plan']['settings'];
};

/** A line for each machine. It is kept while neither its parts nor anything that could touch it changed. */
export function deriveLines({ machines, tables, joints, room, things, solids, settings }: LineSources): Line[] {
  const holders = keepThings(things.filter(({ thing }) => thing.ware !== 'none'));
  const openings = keepOpenings(room.openings);
  const obstacles = floorBodies({ solids });
  return machines.map((machine) => {
    const near = obstaclesAround(machine, obstacles, settings.personWidth);
    return deriveLine(machine, joinedTo(machine, tables, joints), surroundingsOf(machine, room.outline, near, openings, holders, settings));
  });
}

const keepThings = createListKeeper<PlacedThing>();
const keepOpenings = createListKeeper<PlacedOpening>();

// Held with the machine, so that the lines of one room don't forget each other's.
const bodiesOf = memoizeByIdentity((_machine: PlacedMachine) => createListKeeper<Body>());
const tablesOf = memoizeByIdentity((_machine: PlacedMachine) => createListKeeper<TableAtMachine>());
const surroundingsOf = memoizeByIdentity(
  (
    _machine: PlacedMachine,
    outline: Surroundings['outline'],
    obstacles: Surroundings['obstacles'],
    openings: Surroundings['openings'],
    things: Surroundings['things'],
    settings: Surroundings['settings'],
  ): Surroundings => ({ outline, obstacles, openings, things, settings }),
);

/** The obstacles that the search for a place to stand can meet: it begins at the footprint. */
function obstaclesAround(placed: PlacedMachine, obstacles: readonly Body[], personWidth: number): readonly Body[] {
  const around = boundsOf(placed.footprint);
  return bodiesOf(placed)(obstacles.filter(({ bounds }) => isNearBounds(around, bounds, STAND_WITHIN + personWidth)));
}

function joinedTo(placed: PlacedMachine, tables: readonly PlacedTable[], joints: readonly Joint[]): readonly TableAtMachine[] {
  const own = joints.filter((joint) => joint.machine === placed.machine.id);
  const joined = gather(own, (joint) => {
    const table = tables.find((item) => item.table.id === joint.table);
    return table === undefined ? [] : [pair(table, joint)];
  });
  return tablesOf(placed)(joined);
}

const pair = memoizeByIdentity((table: PlacedTable, joint: Joint): TableAtMachine => ({ table, joint }));
