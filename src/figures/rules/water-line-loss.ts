import { deriveLineLoss } from '../support/waterLine';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'water-line-loss',
  title: 'Pressure that the water line takes',
  group: 'water',
  unit: 'Pa',
  derive: (scene) => scene.machines.map((placed) => deriveLineLoss(scene, placed)),
};
