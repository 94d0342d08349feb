import {
  boundOf,
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  isUnder,
  type Measurement,
  machinePlace,
  type Name,
  type NoParams,
  nameMachine,
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

/** What is said of a recorded cycle. °C; heat-unit equivalents. */
export interface HeatUnitsMessages {
  'heat-units/total': NoParams;
  'heat-units/enough': Gathered;
  'heat-units/too-few': Gathered;
  'heat-units/hot': Surface;
  'heat-units/cool': Surface;
}

interface Gathered {
  machine: Name;
  units: number;
  needed: number;
}

interface Surface {
  machine: Name;
  peakC: number;
  leastC: number;
}

const say = createMessages<HeatUnitsMessages>();

const NEEDED = boundOf(HEAT_UNITS);

function measureRecord(scene: Scene, placed: PlacedMachine, reading: FigureReading): Measurement[] {
  const { machine } = placed;
  const name = nameMachine(scene, placed);
  const peak = Math.max(...machine.hookUp.plateRecord.map(({ tempC }) => tempC));
  const place = machinePlace(placed);
  const surface = printedLeast(boundOf(UTENSIL_SURFACE), scene.plan.settings.units);
  return [
    holdReading(reading, {
      part: 'total',
      place,
      what: say('heat-units/total'),
      limit: NEEDED,
      message: (units) =>
        say(isUnder(units, NEEDED) ? 'heat-units/too-few' : 'heat-units/enough', { machine: name, units, needed: NEEDED }),
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
      message: say(isUnder(peak, surface) ? 'heat-units/cool' : 'heat-units/hot', { machine: name, peakC: peak, leastC: surface }),
    },
  ];
}
