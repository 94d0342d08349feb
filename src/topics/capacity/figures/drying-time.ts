import { compute, type FigureReading, type FigureRule, refuse } from '../../../rules';
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

function deriveReading({ clean, machine, stations }: Line): FigureReading[] {
  const racks = stations.find(({ kind }) => kind === 'clean-landing')?.racks ?? null;
  if (clean === null || racks === null) return [];
  const subjects = [clean.table.id];
  const rated = ratedRate(machine);
  if (!rated.ok) return [refuse(subjects, rated.refusal)];
  return [{ subjects, ...compute(dryingTimeRecord, dryingTime, { racks, racksPerH: rated.value }), note: RATED }];
}

const RATED = 'At the rated rate, on the average: how long a rack may stand before the next ones need its place.';
