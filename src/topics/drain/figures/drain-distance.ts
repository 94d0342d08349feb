import type { Point } from '../../../geometry';
import { askFor, createMessages, type FigureReading, type FigureRule, judge, measured, type NoParams } from '../../../rules';
import type { PlacedMachine, PlacedRoom, Scene } from '../../../scene';
import { DIRECT_DRAIN_DISTANCE } from '../formulas/indirectWaste';
import { DRAIN_INPUT, nearestDrain } from './support/drains';

export const rule: FigureRule = {
  id: 'drain-distance',
  order: 730,
  title: 'Drain of the machine to the nearest floor drain',
  group: 'drain',
  unit: 'm',
  derive: (scene) => scene.machines.flatMap((machine) => deriveMachine(scene, machine)),
};

/** What the distance means for a direct connection. */
export interface DrainDistanceMessages {
  'drain-distance/near': NoParams;
  'drain-distance/far': NoParams;
}

const message = createMessages<DrainDistanceMessages>();

/** Each drain of the machine for itself; one alone needs no name. */
function deriveMachine({ room }: Scene, { machine, connections }: PlacedMachine): FigureReading[] {
  const drains = connections.filter(({ connection }) => connection.kind === 'drain');
  return drains.map(({ connection, point }) => {
    const reading = deriveDrain(room, machine.id, point);
    return drains.length > 1
      ? {
          ...reading,
          part: connection.id,
        }
      : reading;
  });
}

function deriveDrain(room: PlacedRoom, machine: string, outlet: Point): FigureReading {
  const nearest = nearestDrain(room, outlet);
  if (nearest === null) return askFor([machine], DRAIN_INPUT, ['room', 'floorDrains']);
  const { placed, distanceM } = nearest;
  return { subjects: [machine, placed.drain.id], value: distanceM, how: HOW, notes: [noteFor(distanceM)] };
}

const HOW = measured('L = straight way on the floor, from the outlet to the middle of the drain', ...DIRECT_DRAIN_DISTANCE.source);

/** Whether it is trapped and vented is for the check of a direct connection. */
const noteFor = (distanceM: number) =>
  message(judge(DIRECT_DRAIN_DISTANCE, distanceM) === 'pass' ? 'drain-distance/near' : 'drain-distance/far');
