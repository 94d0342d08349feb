import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, refuse } from '../../../rules';
import type { Line } from '../../../scene';
import { ratedRate } from '../../line';
import { dryingTime, dryingTimeRecord } from '../formulas/dryingTime';

export const rule: FigureRule = {
  id: 'drying-time',
  order: 100,
  title: 'Time to dry on the clean table',
  group: 'capacity',
  unit: 's',
  derive: (scene) => scene.lines.flatMap(deriveReading),
};

/** What is said beside the time. */
export interface DryingTimeMessages {
  'drying-time/rated': NoParams;
}

const say = createMessages<DryingTimeMessages>();

function deriveReading({ clean, machine, stations }: Line): FigureReading[] {
  const racks = stations.find(({ kind }) => kind === 'clean-landing')?.racks ?? null;
  if (clean === null || racks === null) return [];
  const subjects = [clean.table.id];
  const rated = ratedRate(machine);
  if (!rated.ok) return [refuse(subjects, rated.refusal)];
  return [{ subjects, ...compute(dryingTimeRecord, dryingTime, { racks, racksPerH: rated.value }), notes: [say('drying-time/rated')] }];
}
