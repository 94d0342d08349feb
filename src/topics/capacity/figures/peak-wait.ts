import { compute, type FigureReading, type FigureRule } from '../../../rules';
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

/** `longest`: of the last rack to come in the peak. `cleared`: from the end of the peak until nothing waits. */
function deriveReadings(scene: Scene): FigureReading[] {
  const needed = needRush(scene);
  if ('ask' in needed) return [needed.ask];
  const { rush } = needed;
  const longest = compute(peakLongestWaitRecord, peakLongestWait, rush);
  return [
    { part: 'longest', subjects: [], ...longest, note: 'The last rack to come back in the peak, at the rate of the machines.' },
    { part: 'cleared', ...deriveCleared(scene, rush, longest.value === 0) },
  ];
}

function deriveCleared(scene: Scene, rush: Parameters<typeof peakLongestWait>[0], isNone: boolean): FigureReading {
  if (isNone) return { subjects: [], value: 0, how: null, note: 'The machines keep up: nothing waits at the end of the peak.' };
  const after = needAfter(scene);
  if ('ask' in after) return after.ask;
  return { subjects: [], ...compute(peakClearingRecord, peakClearing, { afterPerH: after.afterPerH, ...rush }), note: AFTER };
}

const AFTER =
  'Counted from the end of the peak, at the rate of the machines. The other meals of the day are spread evenly over the other hours that the machine is on.';
