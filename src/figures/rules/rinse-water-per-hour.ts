import { rackWater, rackWaterRecord } from '../../engineering';
import type { PlacedMachine } from '../../scene';
import { compute } from '../compute';
import { ratedRate } from '../support/rackCycle';
import { refuse } from '../support/readings';
import { NO_FILLS, rinseOf } from '../support/rinseWater';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'rinse-water-per-hour',
  title: 'Rinse water in an hour at the rated rate',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.map(deriveReading),
};

function deriveReading(placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const rated = ratedRate(placed);
  if (!rated.ok) return refuse(subjects, rated.refusal);
  return { subjects, ...compute(rackWaterRecord, rackWater, rinseOf(placed, rated.value)), note: NO_FILLS };
}
