import { askFor, compute, type FigureReading, type FigureRule, readOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { pressureLeft, pressureLeftRecord } from '../formulas/pressureLeft';
import { needWaterLine, RIGHT_ANGLES } from './support/waterLine';
import { rule as waterLineLoss } from './water-line-loss';

export const rule: FigureRule = {
  id: 'pressure-at-machine',
  order: 250,
  title: 'Flow pressure at the machine',
  group: 'water',
  unit: 'Pa',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const kPa = scene.plan.supply.flowPressureKpa;
  if (kPa === null) return askFor([placed.machine.id], 'flow pressure at the stub', ['supply', 'flowPressureKpa']);
  const found = needWaterLine(scene, placed);
  if ('ask' in found) return found.ask;
  const loss = readOf(waterLineLoss, scene, placed.machine.id);
  if (loss.value === null) return loss;
  const inputs = { supplyPa: toSI(kPa, 'kPa'), lossPa: loss.value, riseM: found.line.riseM };
  return { subjects: loss.subjects, ...compute(pressureLeftRecord, pressureLeft, inputs), note: NOTE };
}

const NOTE = `What the line leaves of the pressure at the stub. ${RIGHT_ANGLES} The gauge at the rinse valve tells the true one.`;
