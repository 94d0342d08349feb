import { steadyHumidity, steadyHumidityRecord } from '../../engineering';
import type { Scene } from '../../scene';
import { compute } from '../compute';
import { needRoomMoisture, SUPPLY_NOTE } from '../support/roomMoisture';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'room-vapour',
  title: 'Vapour in the air of the room, after a long while',
  group: 'air',
  unit: 'kg/kg',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveRoom(scene)]),
};

function deriveRoom(scene: Scene): FigureReading {
  const moisture = needRoomMoisture(scene);
  if ('reading' in moisture) return moisture.reading;
  const { airflowM3s, densityKgM3, supplyRatio, vapourKgS } = moisture.known;
  const answer = compute(steadyHumidityRecord, steadyHumidity, { airflowM3s, densityKgM3, supplyRatio, vapourKgS });
  return { subjects: [], ...answer, note: SUPPLY_NOTE };
}
