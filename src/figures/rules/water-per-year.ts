import { deriveYearWater } from '../support/yearWater';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'water-per-year',
  title: 'Water of the machine in a year',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.map((placed) => deriveYearWater(scene, placed)),
};
