import { heldRackRate, heldRackRateRecord } from '../../engineering';
import { compute } from '../compute';
import { RACKS_PER_CYCLE } from '../support/rackCycle';
import { deriveRinse } from '../support/rinseHeat';
import type { FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'real-racks-per-hour',
  title: 'Racks an hour with the wait for the booster',
  group: 'heat',
  unit: '1/h',
  derive: (scene) =>
    deriveRinse(scene, (inputs) => compute(heldRackRateRecord, heldRackRate, { racksPerCycle: RACKS_PER_CYCLE, ...inputs })),
};
