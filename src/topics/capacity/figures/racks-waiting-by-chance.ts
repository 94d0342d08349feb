import { compute, type FigureReading, type FigureRule } from '../../../rules';
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

/** Machines of a fixed cycle that keep up with the peak, and racks that come by chance. */
function deriveReading(scene: Scene): FigureReading {
  const needed = needRush(scene);
  if ('ask' in needed) return needed.ask;
  const { peakPerH, servedPerH } = needed.rush;
  const inputs = { arrivalsPerH: peakPerH, serviceS: 3600 / servedPerH, serviceCv2: 0, counts: 'waiting' as const };
  return { subjects: [], ...compute(queueLengthRecord, queueLength, inputs), note: BY_CHANCE };
}

const BY_CHANCE =
  'On the average, while the peak lasts: also machines that keep up let racks wait when several come at once. Their cycle is fixed; all of them are taken as one.';
