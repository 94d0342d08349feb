import { type Check, type Measurement, machineName, machinePlace, sentence } from '../../../rules';
import { type PlacedMachine, type Scene, sheetPath } from '../../../scene';

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

function measureMachine(scene: Scene, placed: PlacedMachine): Measurement {
  const has = placed.sheet.thermometers;
  const name = machineName(scene, placed);
  const ask = { input: 'thermometers in its tanks and at its rinse', path: sheetPath(scene, placed, 'thermometers') };
  return {
    subjects: [placed.machine.id],
    place: machinePlace(placed),
    value: has,
    limit: true,
    ...(has === null ? { ask } : {}),
    say: () => {
      if (has === null) return `Say whether ${name} has a thermometer in each tank and at its final rinse.`;
      return sentence(
        has
          ? `${name} has a thermometer in each tank and at its final rinse.`
          : `${name} has no thermometer in each tank and at its final rinse. Take one that has, or have its maker fit them.`,
      );
    },
  };
}
