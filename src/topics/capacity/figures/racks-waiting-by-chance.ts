import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { Scene } from '../../../scene';
import { queueLength, queueLengthRecord } from '../formulas/queue';
import { needRush } from './support/rush';

export const rule: FigureRule = {
  id: 'racks-waiting-by-chance',
  order: 80,
  title: 'Racks that wait in the peak by chance',
  group: 'capacity',
  unit: 'count',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveReading(scene)]),
};

/** What is said beside the racks. */
export interface RacksWaitingByChanceMessages {
  'racks-waiting-by-chance/average': NoParams;
}

const say = createMessages<RacksWaitingByChanceMessages>();

/** Machines of a fixed cycle that keep up with the peak, and racks that come by chance. */
function deriveReading(scene: Scene): FigureReading {
  const needed = needRush(scene);
  if ('ask' in needed) return needed.ask;
  const { peakPerH, servedPerH } = needed.rush;
  const inputs = { arrivalsPerH: peakPerH, serviceS: 3600 / servedPerH, serviceCv2: 0, counts: 'waiting' as const };
  return { subjects: [], ...compute(queueLengthRecord, queueLength, inputs), notes: [say('racks-waiting-by-chance/average')] };
}
