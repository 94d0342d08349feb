import { heatUpTime, heatUpTimeRecord } from '../../engineering';
import { compute } from '../compute';
import { deriveRinse } from '../support/rinseHeat';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'rinse-heat-up',
  title: 'Time to heat the rinse of one rack',
  group: 'heat',
  unit: 's',
  derive: (scene) =>
    deriveRinse(scene, ({ perCycleM3, supplyC, rinseC, boosterW, efficiency }) =>
      compute(heatUpTimeRecord, heatUpTime, { waterM3: perCycleM3, fromC: supplyC, toC: rinseC, powerW: boosterW, efficiency }),
    ),
};
