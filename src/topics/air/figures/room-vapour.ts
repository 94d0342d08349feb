import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { Scene } from '../../../scene';
import { steadyHumidity, steadyHumidityRecord } from '../formulas/steadyRoom';
import { needRoomMoisture, SUPPLY_NOTES } from './support/roomMoisture';

export const rule: FigureRule = {
  id: 'room-vapour',
  order: 620,
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
  return { subjects: [], ...answer, notes: SUPPLY_NOTES };
}
