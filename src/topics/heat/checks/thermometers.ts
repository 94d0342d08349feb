import { type Check, createMessages, type Measurement, machinePlace, type Name, type NoParams, nameMachine } from '../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../scene';

export const check: Check = {
  id: 'thermometers',
  order: 370,
  title: 'Thermometers in the machine’s tanks and at its rinse',
  group: 'heat',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'San Marcos TX, ordinance on food establishments',
    section:
      'page 18: in each wash tank, each rinse tank, and at the rinse manifold or in the sanitizing tank; it is FDA Food Code 4-204.115, the number from memory',
    confidence: 'read',
  },
  why: 'Nobody sees how hot the water is. Whoever washes reads it there before the first rack, and an inspector later; each is to be right within 3 °F.',
  measure: (scene) => scene.machines.map((placed) => measureMachine(scene, placed)),
};

/** What is said of a machine's thermometers. */
export interface ThermometersMessages {
  'thermometers/ask': NoParams;
  'thermometers/unknown': { machine: Name };
  'thermometers/has': { machine: Name };
  'thermometers/lacks': { machine: Name };
}

const say = createMessages<ThermometersMessages>();

function measureMachine(scene: Scene, placed: PlacedMachine): Measurement {
  const has = placed.sheet.thermometers;
  const machine = nameMachine(scene, placed);
  const ask = { input: say('thermometers/ask'), path: dataSheetPath(scene, placed, 'thermometers') };
  return {
    subjects: [placed.machine.id],
    place: machinePlace(placed),
    value: has,
    limit: true,
    ...(has === null ? { ask } : {}),
    message: describe(machine, has),
  };
}

function describe(machine: Name, has: boolean | null) {
  if (has === null) return say('thermometers/unknown', { machine });
  return say(has ? 'thermometers/has' : 'thermometers/lacks', { machine });
}
