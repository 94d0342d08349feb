import { heldCycle, heldCycleRecord } from '../../engineering';
import { compute } from '../compute';
import { deriveRinse } from '../support/rinseHeat';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'real-cycle',
  title: 'Cycle with the wait for the booster',
  group: 'heat',
  unit: 's',
  derive: (scene) => deriveRinse(scene, (inputs) => compute(heldCycleRecord, heldCycle, inputs)),
};
