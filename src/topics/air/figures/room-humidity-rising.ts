import { createMessages, type FigureReading, type FigureRule, type NoParams, refuse } from '../../../rules';
import type { Scene } from '../../../scene';
import { risingHumidity } from '../formulas/risingHumidity';
import { askCeilingHeight } from './support/airAsks';
import { relativeOf } from './support/relative';
import { needRoomMoisture, type RoomMoisture } from './support/roomMoisture';

export const rule: FigureRule = {
  id: 'room-humidity-rising',
  order: 640,
  title: 'Relative humidity of the room as the machines begin',
  group: 'air',
  unit: 'share',
  derive: (scene) => (scene.machines.length === 0 ? [] : deriveRoom(scene)),
};

export interface RoomHumidityRisingMessages {
  'room-humidity-rising/from-plan': NoParams;
}

const say = createMessages<RoomHumidityRisingMessages>();

const TIMES = [
  { part: '5-minutes', seconds: 300 },
  { part: '15-minutes', seconds: 900 },
  { part: '60-minutes', seconds: 3600 },
] as const;

/** Walls and ware take up some of the vapour at first, so the room rises no faster than this. */
function deriveRoom(scene: Scene): FigureReading[] {
  const moisture = needRoomMoisture(scene);
  if ('reading' in moisture) return [moisture.reading];
  const { ceilingHeight, areaMm2 } = scene.room;
  if (ceilingHeight === null) return [askCeilingHeight()];
  const volumeM3 = (areaMm2 * ceilingHeight) / 1e9;
  return TIMES.map(({ part, seconds }) => ({ part, ...deriveTime(moisture.known, volumeM3, seconds), notes: NOTES }));
}

const NOTES = [say('room-humidity-rising/from-plan')];

function deriveTime({ roomC, pressurePa, ...moisture }: RoomMoisture, volumeM3: number, seconds: number): FigureReading {
  const humidityRatio = risingHumidity({ volumeM3, seconds, ...moisture });
  if (!humidityRatio.ok) return refuse([], humidityRatio.refusal);
  return { subjects: [], ...relativeOf({ temperatureC: roomC, humidityRatio: humidityRatio.value, pressurePa }) };
}
