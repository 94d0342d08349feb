import { transferAir, transferAirRecord } from '../../engineering';
import type { Scene } from '../../scene';
import { compute } from '../compute';
import { needAir, needRoomExhaust, sumOf } from '../support/roomAir';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'transfer-air',
  title: 'Air from the next rooms',
  group: 'air',
  unit: 'm3/s',
  derive: (scene) => (scene.appliances.length === 0 ? [] : [deriveRoom(scene)]),
};

/** What is drawn out and not made up for: it comes in from the rooms about it. */
function deriveRoom(scene: Scene): FigureReading {
  const exhaust = needRoomExhaust(scene);
  if ('reading' in exhaust) return { ...exhaust.reading, subjects: [] };
  const makeUp = needAir(scene, 'makeUp');
  if ('reading' in makeUp) return makeUp.reading;
  return { subjects: [], ...compute(transferAirRecord, transferAir, { exhaustM3s: sumOf(exhaust.known), makeUpM3s: makeUp.known }) };
}
