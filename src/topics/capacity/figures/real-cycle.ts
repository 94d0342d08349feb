import { compute, type FigureRule } from '../../../rules';
import { deriveRinse, heldCycle, heldCycleRecord } from '../../heat';

export const rule: FigureRule = {
  id: 'real-cycle',
  order: 360,
  title: 'Cycle with the wait for the booster',
  group: 'heat',
  unit: 's',
  derive: (scene) => deriveRinse(scene, (inputs) => compute(heldCycleRecord, heldCycle, inputs)),
};
