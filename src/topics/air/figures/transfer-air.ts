import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { Scene } from '../../../scene';
import { transferAir, transferAirRecord } from '../formulas/airBalance';
import { needRoomFlows } from './support/roomAir';

export const rule: FigureRule = {
  id: 'transfer-air',
  order: 480,
  title: 'Air from the next rooms',
  group: 'air',
  unit: 'm3/s',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveRoom(scene)]),
};

/** What is drawn out and not made up for: it comes in from the rooms about it. */
function deriveRoom(scene: Scene): FigureReading {
  const flows = needRoomFlows(scene);
  if ('reading' in flows) return flows.reading;
  return { subjects: [], ...compute(transferAirRecord, transferAir, flows.known) };
}
