import { createRefusal, type FormulaResult } from '../../../../rules';
import { moistEnthalpy, temperatureOfEnthalpy } from '../enthalpy';
import { findFog, type StateInputs } from '../humidityRatio';
import { moistVolume } from '../moistVolume';

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
 * Refuses where the mixture would be fog. Source: the balances of mass and energy.
 */
export function mixAir(one: AirStream, other: AirStream): FormulaResult<MixedAir> {
  const [a, b] = [measureStream(one), measureStream(other)];
  if (!a.ok) return a;
  if (!b.ok) return b;
  const dryAirKgS = a.value.dry + b.value.dry;
  if (!(dryAirKgS > 0)) return { ok: false, refusal: createRefusal(MIXING, 'nothing-to-mix', {}, { input: 'airflowM3s', value: 0 }) };
  const share = (x: number, y: number) => (a.value.dry * x + b.value.dry * y) / dryAirKgS;
  const humidityRatio = share(one.humidityRatio, other.humidityRatio);
  const temperature = temperatureOfEnthalpy({ enthalpyJkg: share(a.value.enthalpy, b.value.enthalpy), humidityRatio });
  if (!temperature.ok) return temperature;
  const fog = findFog(MIXING, { temperatureC: temperature.value, humidityRatio, pressurePa: one.pressurePa });
  return fog === null ? { ok: true, value: { temperatureC: temperature.value, humidityRatio, dryAirKgS } } : { ok: false, refusal: fog };
}

const MIXING = { id: 'air-mixing', title: 'Mixing' };

function measureStream(stream: AirStream): FormulaResult<{ dry: number; enthalpy: number }> {
  if (!(stream.airflowM3s >= 0 && stream.airflowM3s <= 100)) {
    const about = { input: 'airflowM3s', value: stream.airflowM3s, min: 0, max: 100, unit: 'm3/s' } as const;
    return { ok: false, refusal: createRefusal(MIXING, 'out-of-range', {}, about) };
  }
  const volume = moistVolume(stream);
  if (!volume.ok) return volume;
  const enthalpy = moistEnthalpy(stream);
  return enthalpy.ok ? { ok: true, value: { dry: stream.airflowM3s / volume.value, enthalpy: enthalpy.value } } : enthalpy;
}
