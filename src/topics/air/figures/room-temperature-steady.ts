import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { Scene } from '../../../scene';
import { steadyTemperature, steadyTemperatureRecord } from '../formulas/steadyRoom';
import { needMachineHeat, needRoomSupply } from './support/roomMoisture';

export const rule: FigureRule = {
  id: 'room-temperature-steady',
  order: 660,
  title: 'Temperature of the room, after a long while',
  group: 'air',
  unit: 'C',
  derive: (scene) => (scene.machines.length === 0 ? [] : [deriveRoom(scene)]),
};

export interface RoomTemperatureSteadyMessages {
  'room-temperature-steady/machines-alone': NoParams;
}

const say = createMessages<RoomTemperatureSteadyMessages>();

/** With the dry heat that the machines give the room while they wash rack after rack. */
function deriveRoom(scene: Scene): FigureReading {
  const supply = needRoomSupply(scene);
  if ('reading' in supply) return supply.reading;
  const heat = needMachineHeat(scene, 'sensible');
  if ('reading' in heat) return heat.reading;
  const { airflowM3s, densityKgM3, supplyRatio, supplyC } = supply.known;
  const inputs = { airflowM3s, densityKgM3, supplyRatio, supplyC, sensibleW: heat.known };
  return {
    subjects: [],
    ...compute(steadyTemperatureRecord, steadyTemperature, inputs),
    notes: [say('room-temperature-steady/machines-alone')],
  };
}
