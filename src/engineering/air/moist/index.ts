import { type Formula, formula } from '../../formula';
import { atmosphericPressure, atmosphericPressureRecord } from './atmosphere';
import { dewPoint, dewPointRecord } from './dewPoint';
import { moistEnthalpy, moistEnthalpyRecord, temperatureOfEnthalpy, temperatureOfEnthalpyRecord } from './enthalpy';
import {
  humidityRatio,
  humidityRatioOfRelative,
  humidityRatioOfRelativeRecord,
  humidityRatioRecord,
  relativeHumidity,
  relativeHumidityRecord,
  vapourPressure,
  vapourPressureRecord,
} from './humidityRatio';
import { moistDensity, moistDensityRecord, moistVolume, moistVolumeRecord } from './moistVolume';
import { saturationPressure, saturationPressureRecord } from './saturationPressure';
import { humidityRatioOfWetBulb, humidityRatioOfWetBulbRecord, wetBulb, wetBulbRecord } from './wetBulb';

export { atmosphericPressure } from './atmosphere';
export { dewPoint, dewPointRecord } from './dewPoint';
export { DRY_HEAT, moistEnthalpy, temperatureOfEnthalpy, VAPOUR_HEAT, vapourEnthalpy } from './enthalpy';
export {
  humidityRatio,
  humidityRatioOfRelative,
  relativeHumidity,
  relativeHumidityRecord,
  type StateInputs,
  vapourPressure,
} from './humidityRatio';
export { type AirStream, type MixedAir, mixAir } from './mixAir';
export { type MoistAir, measureMoistAir, measureMoistAirOfRelative } from './moistAir';
export { moistDensity, moistVolume } from './moistVolume';
export { saturationPressure } from './saturationPressure';
export { humidityRatioOfWetBulb, wetBulb } from './wetBulb';

/** Moist air. */
export const MOIST_FORMULAS: readonly Formula[] = [
  formula(saturationPressureRecord, saturationPressure),
  formula(humidityRatioRecord, humidityRatio),
  formula(humidityRatioOfRelativeRecord, humidityRatioOfRelative),
  formula(humidityRatioOfWetBulbRecord, humidityRatioOfWetBulb),
  formula(vapourPressureRecord, vapourPressure),
  formula(relativeHumidityRecord, relativeHumidity),
  formula(dewPointRecord, dewPoint),
  formula(wetBulbRecord, wetBulb),
  formula(moistEnthalpyRecord, moistEnthalpy),
  formula(temperatureOfEnthalpyRecord, temperatureOfEnthalpy),
  formula(moistVolumeRecord, moistVolume),
  formula(moistDensityRecord, moistDensity),
  formula(atmosphericPressureRecord, atmosphericPressure),
];
