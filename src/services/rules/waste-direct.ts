import { type Check, connectionPlace, type Measurement, machineName, sentence } from '../../checks';
import { DIRECT_DRAIN_DISTANCE } from '../../engineering';
import { outletOf } from '../../figures';
import { distance } from '../../geometry';
import type { PlacedMachine, Scene } from '../../scene';

export const check: Check = {
  id: 'waste-direct',
  title: 'A direct connection is near a trapped floor drain',
  group: 'drain',
  unit: 'm',
  relation: 'at-most',
  source: { kind: 'published', document: 'FDA Food Code', section: '5-402.11(C), as South Carolina 61-25 has it', confidence: 'read' },
  why: 'Only where local law allows it may a dish machine be connected directly, and then within 5 ft of a trapped floor drain that shows a backed-up sewer before it reaches the ware.',
  measure: (scene) =>
    scene.machines.filter(({ machine }) => machine.hookUp.waste === 'direct').flatMap((placed) => measureMachine(scene, placed)),
};

/** To the nearest drain that has a trap. One that is near and of which it is not known is asked for. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const outlet = outletOf(placed);
  if (outlet === undefined) return [];
  const limit = DIRECT_DRAIN_DISTANCE.max;
  const common = { place: connectionPlace(placed, 'drain'), limit, subjects: [placed.machine.id] };
  const drains = scene.room.floorDrains
    .map(({ drain, centre }, index) => ({ drain, index, distanceM: distance(centre, outlet) / 1000 }))
    .sort((a, b) => a.distanceM - b.distanceM);
  if (drains.length === 0)
    return [{ ...common, value: null, ask: { input: 'floor drain', path: ['room', 'floorDrains'] }, say: () => NO_DRAIN }];
  const trapped = drains.find(({ drain }) => drain.waste.trapped === true);
  const open = drains.find(({ drain, distanceM }) => drain.waste.trapped === null && distanceM <= (limit ?? 0));
  const isNear = trapped !== undefined && trapped.distanceM <= (limit ?? 0);
  if (!isNear && open !== undefined) {
    const ask = { input: 'trap of the floor drain', path: ['room', 'floorDrains', open.index, 'waste', 'trapped'] };
    return [{ ...common, subjects: [...common.subjects, open.drain.id], value: null, ask, say: () => ASK_TRAP }];
  }
  if (trapped === undefined) {
    return [{ ...common, unit: 'yes-no', relation: 'equals', value: false, limit: true, say: () => sayNone(machineName(scene, placed)) }];
  }
  return [
    {
      ...common,
      subjects: [...common.subjects, trapped.drain.id],
      value: trapped.distanceM,
      say: (f) => {
        const stands = `${sentence(machineName(scene, placed))} is connected directly, ${f.length(trapped.distanceM * 1000)} from a trapped floor drain`;
        return isNear
          ? `${stands}; up to ${f.length((limit ?? 0) * 1000)} it may be, where local law allows it and the trap is vented.`
          : `${stands}, and may be ${f.length((limit ?? 0) * 1000)} at most. Let it run over an air gap, or set a trapped drain nearer.`;
      },
    },
  ];
}

const NO_DRAIN = 'The machine is connected directly, and no floor drain is drawn: draw the trapped one beside it.';
const ASK_TRAP = 'The machine is connected directly: say whether the floor drain beside it has a trap.';
const sayNone = (machine: string) =>
  `${sentence(machine)} is connected directly, and no floor drain has a trap. Let it run over an air gap, or set a trapped floor drain beside it.`;
