import { compute, type FigureRule } from '../../../rules';
import { deriveRinse, heldRackRate, heldRackRateRecord } from '../../heat';
import { RACKS_PER_CYCLE } from '../../line';

export const rule: FigureRule = {
  id: 'real-racks-per-hour',
  order: 370,
  title: 'Racks an hour with the wait for the booster',
  group: 'heat',
  unit: '1/h',
  derive: (scene) =>
    deriveRinse(scene, (inputs) => compute(heldRackRateRecord, heldRackRate, { racksPerCycle: RACKS_PER_CYCLE, ...inputs })),
};
