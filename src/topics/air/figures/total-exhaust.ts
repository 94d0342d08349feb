import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { Scene } from '../../../scene';
import { totalExhaust, totalExhaustRecord } from '../formulas/airBalance';
import { needRoomExhaust } from './support/roomAir';

export const rule: FigureRule = {
  id: 'total-exhaust',
  order: 470,
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
