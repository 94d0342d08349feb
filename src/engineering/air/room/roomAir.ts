import type { Outcome } from '../../record';
import { VAPOUR_JKG, vapourFlow } from '../gain';
import { type MoistAir, measureMoistAir } from '../moist';
import { steadyHumidity, steadyTemperature } from './steadyRoom';

export interface RoomAirInputs {
  supplyC: number;
  supplyRatio: number;
  airflowM3s: number;
  densityKgM3: number;
  pressurePa: number;
  sensibleW: number;
  latentW: number;
  /** The temperature that cooling holds; null where the room warms as it will. */
  heldC: number | null;
}

/** The state of a well-mixed room after a long while, with what its machines give it. Refuses where it would be fog. */
export function solveRoomAir(inputs: RoomAirInputs): Outcome<MoistAir> {
  const { supplyRatio, airflowM3s, densityKgM3, pressurePa } = inputs;
  const vapour = vapourFlow({ latentW: inputs.latentW, vapourJkg: VAPOUR_JKG });
  if (!vapour.ok) return vapour;
  const humidity = steadyHumidity({ supplyRatio, airflowM3s, densityKgM3, vapourKgS: vapour.value });
  if (!humidity.ok) return humidity;
  const temperature = findTemperature(inputs);
  if (!temperature.ok) return temperature;
  return measureMoistAir({ temperatureC: temperature.value, humidityRatio: humidity.value, pressurePa });
}

function findTemperature({ heldC, ...inputs }: RoomAirInputs): Outcome {
  if (heldC !== null) return { ok: true, value: heldC };
  const { supplyC, sensibleW, airflowM3s, densityKgM3, supplyRatio } = inputs;
  return steadyTemperature({ supplyC, sensibleW, airflowM3s, densityKgM3, supplyRatio });
}
