import { compute, type FigureReading, type FigureRule, refuse, withSources } from '../../../rules';
import type { Scene } from '../../../scene';
import { ROOM_HUMIDITY } from '../formulas/airLimits';
import { humidityRatioOfRelative } from '../formulas/humidityRatio';
import { humidityAirflow, humidityAirflowRecord } from '../formulas/steadyRoom';
import { needRoomMoisture, SUPPLY_NOTES } from './support/roomMoisture';

export const rule: FigureRule = {
  id: 'room-airflow-needed',
  order: 650,
  title: 'Air through the room that keeps it at 65 %',
  group: 'air',
  unit: 'm3/s',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveRoom(scene)]),
};

/** As dry as the air that comes in now, in the same parts. */
function deriveRoom(scene: Scene): FigureReading {
  const moisture = needRoomMoisture(scene);
  if ('reading' in moisture) return moisture.reading;
  const { vapourKgS, densityKgM3, supplyRatio, roomC, pressurePa } = moisture.known;
  const highest = humidityRatioOfRelative({ temperatureC: roomC, relativeHumidity: ROOM_HUMIDITY.max ?? 0, pressurePa });
  if (!highest.ok) return refuse([], highest.refusal);
  const inputs = { vapourKgS, densityKgM3, supplyRatio, highestRatio: highest.value };
  const { how, ...answer } = compute(humidityAirflowRecord, humidityAirflow, inputs);
  return { subjects: [], ...answer, how: withSources(how, ...ROOM_HUMIDITY.source), notes: SUPPLY_NOTES };
}
