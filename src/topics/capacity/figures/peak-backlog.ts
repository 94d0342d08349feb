import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
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

/** What is said beside the racks: at what rate they are washed, and how they come. */
export interface PeakBacklogMessages {
  'peak-backlog/rated': NoParams;
  'peak-backlog/practice': NoParams;
  'peak-backlog/stream': NoParams;
}

const say = createMessages<PeakBacklogMessages>();

/** `rated`: at what the machines do; `practice`: at what is kept of it. */
function deriveReadings(scene: Scene): FigureReading[] {
  const needed = needRush(scene);
  if ('ask' in needed) return [needed.ask];
  const { rush } = needed;
  return PACES.map(({ part, share }) => ({
    part,
    subjects: [],
    ...compute(peakBacklogRecord, peakBacklog, { ...rush, servedPerH: share * rush.servedPerH }),
    notes: [say(`peak-backlog/${part}`), say('peak-backlog/stream')],
  }));
}
