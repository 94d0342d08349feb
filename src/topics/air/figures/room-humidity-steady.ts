import { type FigureReading, type FigureRule, refuse } from '../../../rules';
import type { Scene } from '../../../scene';
import { steadyHumidity } from '../formulas/steadyRoom';
import { relativeOf } from './support/relative';
import { needRoomMoisture, SUPPLY_NOTES } from './support/roomMoisture';

export const rule: FigureRule = {
  id: 'room-humidity-steady',
  order: 630,
  title: 'Relative humidity of the room, after a long while',
  group: 'air',
  unit: 'share',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveRoom(scene)]),
};

/** With the vapour that the machines give the room while they wash rack after rack. */
function deriveRoom(scene: Scene): FigureReading {
  const moisture = needRoomMoisture(scene);
  if ('reading' in moisture) return moisture.reading;
  const { airflowM3s, densityKgM3, supplyRatio, vapourKgS, roomC, pressurePa } = moisture.known;
  const humidityRatio = steadyHumidity({ airflowM3s, densityKgM3, supplyRatio, vapourKgS });
  if (!humidityRatio.ok) return refuse([], humidityRatio.refusal);
  return { subjects: [], ...relativeOf({ temperatureC: roomC, humidityRatio: humidityRatio.value, pressurePa }), notes: SUPPLY_NOTES };
}
