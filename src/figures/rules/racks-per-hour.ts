import { rackRate, rackRateRecord } from '../../engineering';
import { compute } from '../compute';
import { cornerNote, cycleInputs } from '../support/rackCycle';
import { noteOf } from '../support/readings';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'racks-per-hour',
  title: 'Rated racks an hour',
  group: 'capacity',
  unit: '1/h',
  derive: (scene) =>
    scene.machines.map((placed) => ({
      subjects: [placed.machine.id],
      ...compute(rackRateRecord, rackRate, cycleInputs(placed.sheet)),
      ...noteOf(cornerNote(scene, placed)),
    })),
};
