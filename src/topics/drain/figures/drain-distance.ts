import type { Point } from '../../../geometry';
import { askFor, type FigureReading, type FigureRule, judge, measured } from '../../../rules';
import type { PlacedMachine, PlacedRoom, Scene } from '../../../scene';
import { DIRECT_DRAIN_DISTANCE } from '../formulas/indirectWaste';
import { nearestDrain } from './support/drains';

export const rule: FigureRule = {
  id: 'drain-distance',
  order: 730,
  title: 'Drain of the machine to the nearest floor drain',
  group: 'drain',
  unit: 'm',
  derive: (scene) => scene.machines.flatMap((machine) => deriveMachine(scene, machine)),
};

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
  if (nearest === null) return askFor([machine], 'floor drain or floor sink', ['room', 'floorDrains']);
  const { placed, distanceM } = nearest;
  return { subjects: [machine, placed.drain.id], value: distanceM, how: HOW, note: noteFor(distanceM) };
}

const HOW = measured('L = straight way on the floor, from the outlet to the middle of the drain', ...DIRECT_DRAIN_DISTANCE.source);

/** Whether it is trapped and vented is for the check of a direct connection. */
const noteFor = (distanceM: number) =>
  judge(DIRECT_DRAIN_DISTANCE, distanceM) === 'pass'
    ? 'Within 5 ft: a direct connection is possible where law allows it and the drain is trapped and vented; else an air gap.'
    : 'More than 5 ft: no direct connection; the waste is indirect, through an air gap.';
