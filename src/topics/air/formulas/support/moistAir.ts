import type { FormulaResult } from '../../../../rules';
import { dewPoint } from '../dewPoint';
import { moistEnthalpy } from '../enthalpy';
import { humidityRatioOfRelative, type RelativeHumidityInputs, relativeHumidity, type StateInputs, vapourPressure } from '../humidityRatio';
import { moistDensity } from '../moistVolume';
import { wetBulb } from '../wetBulb';

/** All that is asked of one state of air. */
export interface MoistAir extends StateInputs {
  relativeHumidity: number;
  dewPointC: number;
  wetBulbC: number;
  enthalpyJkg: number;
  densityKgM3: number;
}

/** The whole state of air of a temperature and a humidity ratio. Refuses what one of its formulas refuses, as dry air, which has no dew point. */
export function measureMoistAir(state: StateInputs): FormulaResult<MoistAir> {
  const relative = relativeHumidity(state);
  if (!relative.ok) return relative;
  const vapour = vapourPressure(state);
  if (!vapour.ok) return vapour;
  const dew = dewPoint({ vapourPa: vapour.value });
  if (!dew.ok) return dew;
  const wet = wetBulb(state);
  if (!wet.ok) return wet;
  const enthalpy = moistEnthalpy(state);
  if (!enthalpy.ok) return enthalpy;
  const density = moistDensity(state);
  if (!density.ok) return density;
  const { temperatureC, humidityRatio, pressurePa } = state;
  return {
    ok: true,
    value: {
      temperatureC,
      humidityRatio,
      pressurePa,
      relativeHumidity: relative.value,
      dewPointC: dew.value,
      wetBulbC: wet.value,
      enthalpyJkg: enthalpy.value,
      densityKgM3: density.value,
    },
  };
}

/** The whole state from temperature and relative humidity. */
export function measureMoistAirOfRelative(inputs: RelativeHumidityInputs): FormulaResult<MoistAir> {
  const humidity = humidityRatioOfRelative(inputs);
  if (!humidity.ok) return humidity;
  return measureMoistAir({ temperatureC: inputs.temperatureC, humidityRatio: humidity.value, pressurePa: inputs.pressurePa });
}
