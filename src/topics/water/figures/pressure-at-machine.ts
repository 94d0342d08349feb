import { askFor, compute, createMessages, type FigureReading, type FigureRule, type NoParams, readOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { pressureLeft, pressureLeftRecord } from '../formulas/pressureLeft';
import { STUB_PRESSURE_INPUT } from './rinse-flow-pressure';
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

/** What the figure is worth. */
export interface PressureLeftMessages {
  'pressure-at-machine/what-is-left': NoParams;
  'pressure-at-machine/gauge': NoParams;
}

const message = createMessages<PressureLeftMessages>();

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const kPa = scene.plan.supply.flowPressureKpa;
  if (kPa === null) return askFor([placed.machine.id], STUB_PRESSURE_INPUT, ['supply', 'flowPressureKpa']);
  const found = needWaterLine(scene, placed);
  if ('ask' in found) return found.ask;
  const loss = readOf(waterLineLoss, scene, placed.machine.id);
  if (loss.value === null) return loss;
  const inputs = { supplyPa: toSI(kPa, 'kPa'), lossPa: loss.value, riseM: found.line.riseM };
  const notes = [message('pressure-at-machine/what-is-left'), RIGHT_ANGLES, message('pressure-at-machine/gauge')];
  return { subjects: loss.subjects, ...compute(pressureLeftRecord, pressureLeft, inputs), notes };
}
