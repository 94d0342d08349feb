import { compute, type FigureRule } from '../../../rules';
import { rinseHold, rinseHoldRecord } from '../formulas/rinseHold';
import { deriveRinse } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'rinse-hold',
  order: 350,
  title: 'Wait for the booster in each cycle',
  group: 'heat',
  unit: 's',
  derive: (scene) => deriveRinse(scene, (inputs) => compute(rinseHoldRecord, rinseHold, inputs)),
};
