import { type FigureReading, type FigureRule, measured } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { needWaterLine, RIGHT_ANGLES } from './support/waterLine';

export const rule: FigureRule = {
  id: 'water-line-length',
  order: 220,
  title: 'Water line from its stub to the machine',
  group: 'water',
  unit: 'm',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const found = needWaterLine(scene, placed);
  if ('ask' in found) return found.ask;
  return { subjects: [placed.machine.id, found.line.stub], value: found.line.lengthM, how: HOW, notes: [RIGHT_ANGLES] };
}

const HOW = measured('L = |Δx| + |Δy| + |Δz|, along the sides of the machine');
