import { type Check, holdReading, isOver, type Measurement, machineName, machinePlace } from '../../../rules';
import { type PlacedMachine, type Scene, sheetPath } from '../../../scene';
import type { Formatter } from '../../../units';
import { findEfficiencyCriterion } from '../../water';

export const check: Check = {
  id: 'idle-criteria',
  order: 410,
  title: 'Idle power beside the published criteria',
  group: 'heat',
  unit: 'W',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'ENERGY STAR commercial dishwashers 3.0',
    section:
      'stationary single-tank door machines, door closed: 0.55 kW with hot water, 0.60 kW with chemicals, from memory; 1.0 asked 1.0 and 0.6 kW',
    confidence: 'memory',
  },
  why: 'A criterion, never a rule: a machine that stands ready between meals is warmed all the while. It tells whether a rebate may be had.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** Only a machine with a tank keeps one warm. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { machine, sheet } = placed;
  const criterion = findEfficiencyCriterion({ machine: 'door', sanitizing: sheet.sanitizing });
  if (criterion === null || sheet.tank === null) return [];
  const ask =
    sheet.idle === null ? { ask: { input: 'power of the machine while it is idle', path: sheetPath(scene, placed, 'idle') } } : {};
  return [
    holdReading(
      { subjects: [machine.id], value: sheet.idle, how: null, ...ask },
      {
        place: machinePlace(placed),
        name: 'how it stands beside the criteria',
        limit: criterion.idleW,
        severity: 'watch',
        say: (value, f) => sayIdle(machineName(scene, placed), value, criterion.idleW, f),
      },
    ),
  ];
}

function sayIdle(machine: string, value: number, limit: number, f: Formatter): string {
  const is = `While it is ready and washes nothing, ${machine} takes ${f.power(value)}`;
  if (isOver(value, limit))
    return `${is}, more than the ${f.power(limit)} of the published criteria: switch it off between meals, or take another.`;
  return `${is}, within the ${f.power(limit)} of the published criteria.`;
}
