import { type Check, isUnder, type Measurement, machineName, machinePlace, printedLeast } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { washLimit } from '../formulas/temperatures';
import { classOf } from './support/machineClass';

export const check: Check = {
  id: 'wash-temperature',
  order: 340,
  title: 'Temperature of the wash',
  group: 'heat',
  unit: 'C',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-501.110, as WAC 246-215-04545: 165 °F single temperature, 150 °F dual, 120 °F with chemicals',
    confidence: 'read',
  },
  why: 'A cooler wash leaves grease on the ware and on the tank. The code tells machines apart by how they sanitise; the plate may ask for more. Water this hot scalds: keep hands out of the tank.',
  measure: (scene) => scene.machines.map((placed) => measureMachine(scene, placed)),
};

/** What the data sheet states as its least against what the code asks of its class. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement {
  const { machine, sheet } = placed;
  const limit = printedLeast(washLimit(classOf(placed), sheet.sanitizing).min ?? Number.NaN, scene.plan.settings.units);
  const value = sheet.temperatures.washC;
  const name = machineName(scene, placed);
  return {
    subjects: [machine.id],
    place: machinePlace(placed),
    value,
    limit,
    say: (f) =>
      isUnder(value, limit)
        ? `The data sheet of ${name} has its wash at ${f.temperature(value)} and the food code asks for ${f.temperature(limit)}: set it higher, or take another machine.`
        : `The wash of ${name} is at least ${f.temperature(value)}; the food code asks for ${f.temperature(limit)}.`,
  };
}
