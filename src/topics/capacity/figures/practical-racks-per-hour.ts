import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, refuse } from '../../../rules';
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

/** What is said beside the rate. */
export interface PracticalRacksPerHourMessages {
  'practical-racks-per-hour/share': NoParams;
}

const say = createMessages<PracticalRacksPerHourMessages>();

function deriveReading(placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const rated = ratedRate(placed);
  if (!rated.ok) return refuse(subjects, rated.refusal);
  const inputs = { racksPerH: rated.value, practicalShare: PRACTICAL_SHARE };
  return { subjects, ...compute(practicalRateRecord, practicalRate, inputs), notes: [say('practical-racks-per-hour/share')] };
}
