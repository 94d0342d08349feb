import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { Scene } from '../../../scene';
import { peakBacklog, peakBacklogRecord } from '../formulas/peak';
import { needRush, PACES } from './support/rush';

export const rule: FigureRule = {
  id: 'peak-backlog',
  order: 50,
  title: 'Racks that wait at the end of the peak',
  group: 'capacity',
  unit: 'count',
  derive: (scene) => (scene.machines.length === 0 ? [] : deriveReadings(scene)),
};

/** `rated`: at what the machines do; `practice`: at what is kept of it. */
function deriveReadings(scene: Scene): FigureReading[] {
  const needed = needRush(scene);
  if ('ask' in needed) return [needed.ask];
  const { rush } = needed;
  return PACES.map(({ part, share, words }) => ({
    part,
    subjects: [],
    ...compute(peakBacklogRecord, peakBacklog, { ...rush, servedPerH: share * rush.servedPerH }),
    note: `${words} ${STREAM}`,
  }));
}

const STREAM = 'Ware is taken to come back evenly through the peak, with nothing waiting before it.';
