import { totalExhaust, totalExhaustRecord } from '../../engineering';
import type { Scene } from '../../scene';
import { compute } from '../compute';
import { needRoomExhaust } from '../support/roomAir';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'total-exhaust',
  title: 'Air drawn out of the room',
  group: 'air',
  unit: 'm3/s',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveRoom(scene)]),
};

/** Hoods, runs and the general exhaust together, as the plan states them. */
function deriveRoom(scene: Scene): FigureReading {
  const exhaust = needRoomExhaust(scene);
  if ('reading' in exhaust)
    return {
      ...exhaust.reading,
      subjects: [],
    };
  const { hoods, runs, room } = exhaust.known;
  return { subjects: [], ...compute(totalExhaustRecord, totalExhaust, { airflowsM3s: [...hoods, ...runs, room] }) };
}
