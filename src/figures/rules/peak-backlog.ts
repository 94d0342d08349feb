import { peakBacklog, peakBacklogRecord } from '../../engineering';
import type { Scene } from '../../scene';
import { compute } from '../compute';
import { needRush, PACES } from '../support/rush';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'peak-backlog',
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
