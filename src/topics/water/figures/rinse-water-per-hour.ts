import { compute, type FigureReading, type FigureRule, refuse } from '../../../rules';
import type { PlacedMachine } from '../../../scene';
import { ratedRate } from '../../line';
import { rackWater, rackWaterRecord } from '../formulas/rackWater';
import { NO_FILLS, rinseOf } from './support/rinseWater';

export const rule: FigureRule = {
  id: 'rinse-water-per-hour',
  order: 120,
  title: 'Rinse water in an hour at the rated rate',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.map(deriveReading),
};

function deriveReading(placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const rated = ratedRate(placed);
  if (!rated.ok) return refuse(subjects, rated.refusal);
  return { subjects, ...compute(rackWaterRecord, rackWater, rinseOf(placed, rated.value)), notes: [NO_FILLS] };
}
