import { compute, type FigureReading, type FigureRule, refuse } from '../../../rules';
import type { PlacedMachine } from '../../../scene';
import { ratedRate } from '../../line';
import { PRACTICAL_SHARE, practicalRate, practicalRateRecord } from '../formulas/practicalRate';

export const rule: FigureRule = {
  id: 'practical-racks-per-hour',
  order: 20,
  title: 'Racks an hour in practice',
  group: 'capacity',
  unit: '1/h',
  derive: (scene) => scene.machines.map(deriveReading),
};

function deriveReading(placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const rated = ratedRate(placed);
  if (!rated.ok) return refuse(subjects, rated.refusal);
  const inputs = { racksPerH: rated.value, practicalShare: PRACTICAL_SHARE };
  return { subjects, ...compute(practicalRateRecord, practicalRate, inputs), note: SHARE_NOTE };
}

const SHARE_NOTE = 'Taken as 0.70 of the rated rate: texts give 0.70 to 0.80, from memory. A wait for the booster is not counted.';
