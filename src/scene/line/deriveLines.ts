import { type Body, boundsOf, isNearBounds } from '../../geometry';
import type { Settings } from '../../plan';
import { memoizeByIdentity } from '../memoizeByIdentity';
import { measureJoints } from '../table/measureJoint';
import type { Joint, Line, PlacedMachine, PlacedRoom, PlacedTable, PlacedThing, Solid } from '../types';
import { floorBodies } from '../ways/floorObstacles';
import { deriveLine, type Surroundings, type TableAtMachine } from './deriveLine';
import { STAND_WITHIN } from './deriveStand';

/** A line for each machine. */
export const deriveLines = memoizeByIdentity(
  (
    machines: readonly PlacedMachine[],
    tables: readonly PlacedTable[],
    room: PlacedRoom,
    things: readonly PlacedThing[],
    solids: readonly Solid[],
    settings: Settings,
  ): Line[] => {
    const joints = measureJoints(tables, machines);
    const holders = things.filter(({ thing }) => thing.ware !== 'none');
    const bodies = floorBodies({ solids });
    return machines.map((machine) => {
      const obstacles = obstaclesAround(machine, bodies, settings.personWidth);
      const around: Surroundings = { outline: room.outline, obstacles, openings: room.openings, things: holders, settings };
      return deriveLine(machine, joinedTo(machine, tables, joints), around);
    });
  },
);

/** The obstacles that the search for a place to stand can meet: it begins at the footprint. */
function obstaclesAround({ footprint }: PlacedMachine, bodies: readonly Body[], personWidth: number): readonly Body[] {
  const around = boundsOf(footprint);
  return bodies.filter(({ bounds }) => isNearBounds(around, bounds, STAND_WITHIN + personWidth));
}

const joinedTo = ({ machine }: PlacedMachine, tables: readonly PlacedTable[], joints: readonly Joint[]): TableAtMachine[] =>
  joints.flatMap((joint) => {
    const table = joint.machine === machine.id ? tables.find((item) => item.table.id === joint.table) : undefined;
    return table === undefined ? [] : [{ table, joint }];
  });
