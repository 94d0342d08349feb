import type { Outcome } from '../../record';
import { moistEnthalpy, temperatureOfEnthalpy } from './enthalpy';
import { findFog, type StateInputs } from './humidityRatio';
import { moistVolume } from './moistVolume';

/** A stream of moist air. */
export interface AirStream extends StateInputs {
  airflowM3s: number;
}

export interface MixedAir {
  temperatureC: number;
  humidityRatio: number;
  /** Dry air that passes, kg/s. */
  dryAirKgS: number;
}

/**
 * Two streams mixed without heat from outside: vapour and enthalpy share out by the dry air that each brings.
 * Refuses where the mixture would be fog. Source: the balances of mass and energy; case A-P15.
 */
export function mixAir(one: AirStream, other: AirStream): Outcome<MixedAir> {
  const [a, b] = [measureStream(one), measureStream(other)];
  if (!a.ok) return a;
  if (!b.ok) return b;
  const dryAirKgS = a.value.dry + b.value.dry;
  if (!(dryAirKgS > 0)) return { ok: false, reason: 'airflowM3s is 0 in both streams; there is nothing to mix' };
  const share = (x: number, y: number) => (a.value.dry * x + b.value.dry * y) / dryAirKgS;
  const humidityRatio = share(one.humidityRatio, other.humidityRatio);
  const temperature = temperatureOfEnthalpy({ enthalpyJkg: share(a.value.enthalpy, b.value.enthalpy), humidityRatio });
  if (!temperature.ok) return temperature;
  const fog = findFog({ temperatureC: temperature.value, humidityRatio, pressurePa: one.pressurePa });
  return fog === null ? { ok: true, value: { temperatureC: temperature.value, humidityRatio, dryAirKgS } } : { ok: false, reason: fog };
}

function measureStream(stream: AirStream): Outcome<{ dry: number; enthalpy: number }> {
  if (!(stream.airflowM3s >= 0 && stream.airflowM3s <= 100)) {
    return { ok: false, reason: `airflowM3s is ${stream.airflowM3s}; mixing holds for 0 to 100 m3/s` };
  }
  const volume = moistVolume(stream);
  if (!volume.ok) return volume;
  const enthalpy = moistEnthalpy(stream);
  return enthalpy.ok ? { ok: true, value: { dry: stream.airflowM3s / volume.value, enthalpy: enthalpy.value } } : enthalpy;
}
