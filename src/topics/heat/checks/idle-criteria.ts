import {
  type Check,
  createMessages,
  holdReading,
  isOver,
  type Measurement,
  machinePlace,
  type Name,
  type NoParams,
  nameMachine,
} from '../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../scene';
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

/** What is said of the idle power. Powers in W. */
export interface IdleCriteriaMessages {
  'idle-criteria/standing': NoParams;
  'idle-criteria/ask-idle': NoParams;
  'idle-criteria/within': Compared;
  'idle-criteria/above': Compared;
}

interface Compared {
  machine: Name;
  takes: number;
  most: number;
}

const say = createMessages<IdleCriteriaMessages>();

/** Only a machine with a tank keeps one warm. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { machine, sheet } = placed;
  const criterion = findEfficiencyCriterion({ machine: 'door', sanitizing: sheet.sanitizing });
  if (criterion === null || sheet.tank === null) return [];
  const ask = sheet.idle === null ? { ask: { input: say('idle-criteria/ask-idle'), path: dataSheetPath(scene, placed, 'idle') } } : {};
  return [
    holdReading(
      { subjects: [machine.id], value: sheet.idle, how: null, ...ask },
      {
        place: machinePlace(placed),
        what: say('idle-criteria/standing'),
        limit: criterion.idleW,
        severity: 'watch',
        message: (takes) => describeIdle({ machine: nameMachine(scene, placed), takes, most: criterion.idleW }),
      },
    ),
  ];
}

const describeIdle = (compared: Compared) =>
  say(isOver(compared.takes, compared.most) ? 'idle-criteria/above' : 'idle-criteria/within', compared);
