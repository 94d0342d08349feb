import {
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  isOver,
  type Measurement,
  machinePlace,
  type Name,
  type NoParams,
  nameMachine,
  readingsFor,
} from '../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../scene';
import { rule as boosterPowerNeededFigure } from '../figures/booster-power-needed';
import { BOOSTER_INPUT } from '../figures/support/heatAsks';

export const check: Check = {
  id: 'booster-enough',
  order: 380,
  title: 'The booster keeps up with the rinse',
  group: 'heat',
  unit: 'W',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'San Joaquin County CA, form EHD 16-01',
    section: 'rev. 7/5/17: kW = gph · rise · 8.33 / (0.98 · 3412)',
    confidence: 'read',
  },
  why: 'A booster that is too small does not spoil the rinse: the machine holds it until the water is hot, so each cycle is longer and fewer racks are done in an hour. The connection plate governs, and a licensed electrician decides.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** What is said of a booster. Powers in W. */
export interface BoosterEnoughMessages {
  'booster-enough/keeps-up': NoParams;
  'booster-enough/enough': Compared;
  'booster-enough/too-small': Compared;
}

interface Compared {
  machine: Name;
  needed: number;
  has: number;
}

const say = createMessages<BoosterEnoughMessages>();

function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { booster } = placed.sheet;
  return readingsFor(boosterPowerNeededFigure, scene, placed).map((reading) =>
    holdReading(booster === null ? askBooster(scene, placed) : reading, {
      place: machinePlace(placed),
      what: say('booster-enough/keeps-up'),
      limit: booster,
      severity: 'watch',
      message: (needed) => describeBooster({ machine: nameMachine(scene, placed), needed, has: booster ?? 0 }),
    }),
  );
}

const askBooster = (scene: Scene, placed: PlacedMachine): FigureReading => ({
  subjects: [placed.machine.id],
  value: null,
  ask: { input: BOOSTER_INPUT, path: dataSheetPath(scene, placed, 'booster') },
  how: null,
});

const describeBooster = (compared: Compared) =>
  say(isOver(compared.needed, compared.has) ? 'booster-enough/too-small' : 'booster-enough/enough', compared);
