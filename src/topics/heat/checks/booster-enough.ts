import {
  type Check,
  type FigureReading,
  holdReading,
  isOver,
  type Measurement,
  machineName,
  machinePlace,
  readingsFor,
} from '../../../rules';
import { type PlacedMachine, type Scene, sheetPath } from '../../../scene';
import type { Formatter } from '../../../units';
import { rule as boosterPowerNeededFigure } from '../figures/booster-power-needed';

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

function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { booster } = placed.sheet;
  return readingsFor(boosterPowerNeededFigure, scene, placed).map((reading) =>
    holdReading(booster === null ? askBooster(scene, placed) : reading, {
      place: machinePlace(placed),
      name: 'whether the booster keeps up',
      limit: booster,
      severity: 'watch',
      say: (value, f) => sayBooster(machineName(scene, placed), value, booster ?? 0, f),
    }),
  );
}

const askBooster = (scene: Scene, placed: PlacedMachine): FigureReading => ({
  subjects: [placed.machine.id],
  value: null,
  ask: { input: 'power of the booster', path: sheetPath(scene, placed, 'booster') },
  how: null,
});

function sayBooster(machine: string, needed: number, booster: number, f: Formatter): string {
  const words = `To keep ${machine} at its rated rate the booster needs ${f.power(needed)} and has ${f.power(booster)}`;
  return isOver(needed, booster)
    ? `${words}: the rinse waits in each cycle and fewer racks are done. Feed it hotter water, or take a larger booster.`
    : `${words}.`;
}
