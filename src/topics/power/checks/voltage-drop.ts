import {
  type Check,
  connectionPlace,
  type FigureReading,
  figureWords,
  holdReading,
  type Measurement,
  machineName,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { formatNumber, UNIT_SPACE } from '../../../units';
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
      name: 'the voltage lost in the wires',
      limit: most,
      severity: 'watch',
      say: (lost, f) => {
        const [is, may] = [lost, most].map((part) => `${formatNumber(part * 100, 1)}${UNIT_SPACE}%`);
        const stands = `On the way to ${machineName(scene, placed)} the wires lose ${figureWords(lost * voltage, 'V', f)} of ${f.voltage(voltage)}, ${is}`;
        return lost > most + ROUNDING
          ? `${stands}; ${may} is recommended at most. Take thicker wire or a shorter way; a licensed electrician decides.`
          : `${stands}; ${may} is recommended at most.`;
      },
    },
  );
}

const ROUNDING = 1e-9;
