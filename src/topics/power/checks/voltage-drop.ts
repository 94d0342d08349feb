import {
  type Check,
  connectionPlace,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { rule as voltageDropFigure } from '../figures/voltage-drop';
import { BRANCH_DROP } from '../formulas/voltageDrop';

export const check: Check = {
  id: 'voltage-drop',
  order: 670,
  title: 'Little voltage is lost in the wires',
  group: 'power',
  unit: 'share',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'NEC',
    section: '210.19(A), informational note as restated: a recommendation, not a rule',
    confidence: 'secondary',
  },
  why: 'Voltage that the wires take is missing at the heaters: at 3 % less they give 6 % less heat, and the booster takes longer. Preliminary: the connection plate inside the control compartment governs, and a licensed electrician decides.',
  measure: (scene) =>
    scene.machines.flatMap((placed) => readingsFor(voltageDropFigure, scene, placed).map((reading) => measureDrop(scene, placed, reading))),
};

/** What is said of the voltage that is lost. */
export interface VoltageDropMessages {
  'voltage-drop/lost': NoParams;
  'voltage-drop/little': Drop;
  'voltage-drop/much': Drop;
}

interface Drop {
  machine: Name;
  lostV: number;
  ofV: number;
  share: number;
  most: number;
}

const say = createMessages<VoltageDropMessages>();

/** A recommendation, and the resistance of copper is from memory: never more than a watch. */
function measureDrop(scene: Scene, placed: PlacedMachine, reading: FigureReading): Measurement {
  const voltage = placed.sheet.electrical.find(({ id }) => id === placed.machine.electrical)?.voltage ?? Number.NaN;
  const most = BRANCH_DROP.max ?? 0;
  const share = reading.value === null ? null : reading.value / voltage;
  return holdReading(
    {
      ...reading,
      value: share,
    },
    {
      place: connectionPlace(placed, 'power'),
      what: say('voltage-drop/lost'),
      limit: most,
      severity: 'watch',
      message: (lost) =>
        say(lost > most + ROUNDING ? 'voltage-drop/much' : 'voltage-drop/little', {
          machine: nameMachine(scene, placed),
          lostV: lost * voltage,
          ofV: voltage,
          share: lost,
          most,
        }),
    },
  );
}

const ROUNDING = 1e-9;
