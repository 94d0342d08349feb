import { type Check, createMessages, isUnder, type Measurement, machinePlace, type Name, nameMachine, printedLeast } from '../../../rules';
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

/** What is said of the wash. °C. */
export interface WashTemperatureMessages {
  'wash-temperature/warm': Compared;
  'wash-temperature/cool': Compared;
}

interface Compared {
  machine: Name;
  washC: number;
  leastC: number;
}

const say = createMessages<WashTemperatureMessages>();

/** What the data sheet states as its least against what the code asks of its class. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement {
  const { machine, sheet } = placed;
  const limit = printedLeast(washLimit(classOf(placed), sheet.sanitizing).min ?? Number.NaN, scene.plan.settings.units);
  const value = sheet.temperatures.washC;
  const compared = { machine: nameMachine(scene, placed), washC: value, leastC: limit };
  return {
    subjects: [machine.id],
    place: machinePlace(placed),
    value,
    limit,
    message: say(isUnder(value, limit) ? 'wash-temperature/cool' : 'wash-temperature/warm', compared),
  };
}
