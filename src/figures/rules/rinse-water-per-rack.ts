import { rackWater, rackWaterRecord } from '../../engineering';
import { compute } from '../compute';
import { rinseOf } from '../support/rinseWater';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'rinse-water-per-rack',
  title: 'Rinse water of a rack',
  group: 'water',
  unit: 'm3',
  derive: (scene) =>
    scene.machines.map((placed) => ({
      subjects: [placed.machine.id],
      ...compute(rackWaterRecord, rackWater, rinseOf(placed, 1)),
      note: 'As the data sheet states it.',
    })),
};
