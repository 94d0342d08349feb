import { rinseHold, rinseHoldRecord } from '../../engineering';
import { compute } from '../compute';
import { deriveRinse } from '../support/rinseHeat';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'rinse-hold',
  title: 'Wait for the booster in each cycle',
  group: 'heat',
  unit: 's',
  derive: (scene) => deriveRinse(scene, (inputs) => compute(rinseHoldRecord, rinseHold, inputs)),
};
