import { createMessages, type FigureReading, type NoParams, refuse } from '../../../../rules';
import { memoizeByIdentity, type Scene } from '../../../../scene';
import { humidityRatioOfRelative } from '../../formulas/humidityRatio';
import { moistVolume } from '../../formulas/moistVolume';
import { type AirStream, mixAir } from '../../formulas/support/mixAir';
import { VAPOUR_JKG, vapourFlow } from '../../formulas/vapourFlow';
import { machineHeats } from './machineHeats';
import { needAir, needRoomExhaust, sumOf } from './roomAir';
import { needPressure } from './sitePressure';

/** What goes into the balance of the room's heat: the air that passes through it. */
export interface RoomSupply {
  /** Air that passes through the room, m³/s. */
  airflowM3s: number;
  /** Dry air to a cubic metre of it. */
  densityKgM3: number;
  /** Vapour to dry air of what comes in: make-up air, and the rest out of the next rooms. */
  supplyRatio: number;
  supplyC: number;
  /** Of the room before the machines work. */
  firstRatio: number;
  roomC: number;
  pressurePa: number;
}

/** What goes into the balance of the room's vapour. */
export interface RoomMoisture extends RoomSupply {
  vapourKgS: number;
}

type Known<T> = { known: T } | { reading: FigureReading };

/** What is assumed of the air in the balance. */
export interface RoomMoistureMessages {
  'room-moisture/next-rooms': NoParams;
  'room-moisture/temperature-held': NoParams;
}

const say = createMessages<RoomMoistureMessages>();

/** Air from the next rooms is counted as the air that the plan states for this one. */
export const SUPPLY_NOTES = [say('room-moisture/next-rooms'), say('room-moisture/temperature-held')] as const;

/** The balance of a room, or the reading that asks for what is missing. Several figures rest on it; it is worked out once. */
export const needRoomMoisture = memoizeByIdentity(deriveMoisture);

/** The air that passes through the room, or the reading that asks for what is missing. */
export const needRoomSupply = memoizeByIdentity(deriveSupply);

function deriveMoisture(scene: Scene): Known<RoomMoisture> {
  const state = needRoomSupply(scene);
  if ('reading' in state) return state;
  const latent = needMachineHeat(scene, 'latent');
  if ('reading' in latent) return latent;
  const vapour = vapourFlow({ latentW: latent.known, vapourJkg: VAPOUR_JKG });
  if (!vapour.ok) return { reading: refuse([], vapour.refusal) };
  return { known: { vapourKgS: vapour.value, ...state.known } };
}

/** Air that is blown into a hood's own cavity is make-up air that never passes through the room. */
const cavityAir = ({ plan }: Scene): number => plan.hoods.reduce((sum, hood) => sum + (hood.cavityAir ?? 0), 0);

function deriveSupply(scene: Scene): Known<RoomSupply> {
  const exhaust = needRoomExhaust(scene);
  if ('reading' in exhaust)
    return {
      reading: {
        ...exhaust.reading,
        subjects: [],
      },
    };
  const pressure = needPressure(scene, []);
  if ('reading' in pressure) return pressure;
  const makeUpM3s = needAir(scene, 'makeUp');
  if ('reading' in makeUpM3s) return makeUpM3s;
  const room = needStream(scene, 'roomC', 'roomHumidity', { pressurePa: pressure.known, airflowM3s: 0 });
  if ('reading' in room) return room;
  const fromRooms = Math.max(0, sumOf(exhaust.known) - makeUpM3s.known);
  const intoRoom = Math.max(0, makeUpM3s.known - cavityAir(scene));
  if (intoRoom === 0) return finish({ ...room.known, airflowM3s: fromRooms }, room.known);
  const makeUp = needStream(scene, 'makeUpC', 'makeUpHumidity', { pressurePa: pressure.known, airflowM3s: intoRoom });
  if ('reading' in makeUp) return makeUp;
  const mixed = mixAir(makeUp.known, { ...room.known, airflowM3s: fromRooms });
  if (!mixed.ok) return { reading: refuse([], mixed.refusal) };
  const { humidityRatio, temperatureC } = mixed.value;
  return finish({ ...room.known, humidityRatio, temperatureC, airflowM3s: intoRoom + fromRooms }, room.known);
}

function finish(supply: AirStream, room: AirStream): Known<RoomSupply> {
  const volume = moistVolume(room);
  if (!volume.ok) return { reading: refuse([], volume.refusal) };
  const { temperatureC: roomC, humidityRatio: firstRatio, pressurePa } = room;
  const { airflowM3s, humidityRatio: supplyRatio, temperatureC: supplyC } = supply;
  return { known: { airflowM3s, densityKgM3: 1 / volume.value, supplyRatio, supplyC, firstRatio, roomC, pressurePa } };
}

type Humidity = 'roomHumidity' | 'makeUpHumidity';
type Temperature = 'roomC' | 'makeUpC';

function needStream(
  scene: Scene,
  temperature: Temperature,
  humidity: Humidity,
  rest: Pick<AirStream, 'pressurePa' | 'airflowM3s'>,
): Known<AirStream> {
  const temperatureC = needAir(scene, temperature);
  if ('reading' in temperatureC) return temperatureC;
  const relative = needAir(scene, humidity);
  if ('reading' in relative) return relative;
  const ratio = humidityRatioOfRelative({
    temperatureC: temperatureC.known,
    relativeHumidity: relative.known,
    pressurePa: rest.pressurePa,
  });
  if (!ratio.ok) return { reading: refuse([], ratio.refusal) };
  return { known: { temperatureC: temperatureC.known, humidityRatio: ratio.value, ...rest } };
}

/** Heat of all machines to the room, as their own figure has it. */
export function needMachineHeat(scene: Scene, wanted: 'sensible' | 'latent'): Known<number> {
  const readings = machineHeats(scene).filter(({ part }) => part === wanted);
  const open = readings.find(({ value }) => value === null);
  if (open !== undefined) {
    const { part: _part, ...rest } = open;
    return { reading: { ...rest, subjects: [] } };
  }
  return { known: readings.reduce((sum, { value }) => sum + (value ?? 0), 0) };
}
