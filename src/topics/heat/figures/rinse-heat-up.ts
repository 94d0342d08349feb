import { compute, type FigureRule } from '../../../rules';
import { heatUpTime, heatUpTimeRecord } from '../formulas/heatUpTime';
import { deriveRinse } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'rinse-heat-up',
  order: 340,
  title: 'Time to heat the rinse of one rack',
  group: 'heat',
  unit: 's',
  derive: (scene) =>
    deriveRinse(scene, ({ perCycleM3, supplyC, rinseC, boosterW, efficiency }) =>
      compute(heatUpTimeRecord, heatUpTime, { waterM3: perCycleM3, fromC: supplyC, toC: rinseC, powerW: boosterW, efficiency }),
    ),
};
