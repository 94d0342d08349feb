import { compute, type FigureRule, notesOf } from '../../../rules';
import { cornerNote, cycleInputs, rackRate, rackRateRecord } from '../../line';

export const rule: FigureRule = {
  id: 'racks-per-hour',
  order: 10,
  title: 'Rated racks an hour',
  group: 'capacity',
  unit: '1/h',
  derive: (scene) =>
    scene.machines.map((placed) => ({
      subjects: [placed.machine.id],
      ...compute(rackRateRecord, rackRate, cycleInputs(placed.sheet)),
      ...notesOf(cornerNote(scene, placed)),
    })),
};
