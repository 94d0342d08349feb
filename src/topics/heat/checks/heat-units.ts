import {
  boundOf,
  type Check,
  type FigureReading,
  holdReading,
  isUnder,
  type Measurement,
  machineName,
  machinePlace,
  printedLeast,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { rule as heatUnitsFigure } from '../figures/heat-units';
import { HEAT_UNITS } from '../formulas/heatUnits';
import { UTENSIL_SURFACE } from '../formulas/temperatures';

export const check: Check = {
  id: 'heat-units',
  order: 420,
  title: 'Heat that a plate took up in a recorded cycle',
  group: 'heat',
  unit: 'count',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'NSF/ANSI 3',
    section: '3,600 heat-unit equivalents at the surface of the dish, as a comparison with NSF/ANSI 184 restates it',
    confidence: 'secondary',
  },
  why: 'What counts is heat at the plate over time, not the thermometer of the tank. It is read at start-up with a thermometer that goes through the machine; plates come out hot.',
  measure: (scene) =>
    scene.machines
      .filter(({ machine }) => machine.hookUp.plateRecord.length > 0)
      .flatMap((placed) => readingsFor(heatUnitsFigure, scene, placed).flatMap((reading) => measureRecord(scene, placed, reading))),
};

const NEEDED = boundOf(HEAT_UNITS);

function measureRecord(scene: Scene, placed: PlacedMachine, reading: FigureReading): Measurement[] {
  const { machine } = placed;
  const name = machineName(scene, placed);
  const peak = Math.max(...machine.hookUp.plateRecord.map(({ tempC }) => tempC));
  const place = machinePlace(placed);
  const surface = printedLeast(boundOf(UTENSIL_SURFACE), scene.plan.settings.units);
  return [
    holdReading(reading, {
      part: 'total',
      place,
      name: 'the heat units of the recorded cycle',
      limit: NEEDED,
      say: (value, f) =>
        isUnder(value, NEEDED)
          ? `In the recorded cycle of ${name} a plate took up ${f.count(Math.round(value))} heat units of the ${f.count(NEEDED)} that sanitise: a hotter rinse or a longer cycle, then record it again.`
          : `In the recorded cycle of ${name} a plate took up ${f.count(Math.round(value))} heat units; ${f.count(NEEDED)} sanitise.`,
    }),
    {
      part: 'surface',
      subjects: [machine.id],
      place,
      value: peak,
      limit: surface,
      unit: 'C',
      source: {
        kind: 'published',
        document: 'FDA Food Code',
        section: '4-703.11(B), as Minnesota Rules 4626.0905: 160 °F at the surface of the utensil',
        confidence: 'read',
      },
      say: (f) =>
        isUnder(peak, surface)
          ? `In the recorded cycle of ${name} a plate came to ${f.temperature(peak)} and the food code asks for ${f.temperature(surface)} at its surface: a hotter rinse, then record it again.`
          : `In the recorded cycle of ${name} a plate came to ${f.temperature(peak)}; the food code asks for ${f.temperature(surface)} at its surface.`,
    },
  ];
}
