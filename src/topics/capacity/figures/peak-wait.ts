import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { Scene } from '../../../scene';
import { peakClearing, peakClearingRecord, peakLongestWait, peakLongestWaitRecord } from '../formulas/peak';
import { needAfter, needRush } from './support/rush';

export const rule: FigureRule = {
  id: 'peak-wait',
  order: 60,
  title: 'Wait in the peak',
  group: 'capacity',
  unit: 's',
  derive: (scene) => (scene.machines.length === 0 ? [] : deriveReadings(scene)),
};

/** What is said beside the wait. */
export interface PeakWaitMessages {
  'peak-wait/longest': NoParams;
  'peak-wait/nothing-waits': NoParams;
  'peak-wait/after': NoParams;
}

const say = createMessages<PeakWaitMessages>();

/** `longest`: of the last rack to come in the peak. `cleared`: from the end of the peak until nothing waits. */
function deriveReadings(scene: Scene): FigureReading[] {
  const needed = needRush(scene);
  if ('ask' in needed) return [needed.ask];
  const { rush } = needed;
  const longest = compute(peakLongestWaitRecord, peakLongestWait, rush);
  return [
    { part: 'longest', subjects: [], ...longest, notes: [say('peak-wait/longest')] },
    { part: 'cleared', ...deriveCleared(scene, rush, longest.value === 0) },
  ];
}

function deriveCleared(scene: Scene, rush: Parameters<typeof peakLongestWait>[0], isNone: boolean): FigureReading {
  if (isNone) return { subjects: [], value: 0, how: null, notes: [say('peak-wait/nothing-waits')] };
  const after = needAfter(scene);
  if ('ask' in after) return after.ask;
  return {
    subjects: [],
    ...compute(peakClearingRecord, peakClearing, { afterPerH: after.afterPerH, ...rush }),
    notes: [say('peak-wait/after')],
  };
}
