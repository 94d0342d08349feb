export { needAir } from './figures/support/roomAir';
export { machineOf, needAirflow, subjectsOf } from './figures/support/runAirflow';
export { needPressure } from './figures/support/sitePressure';
export { rule as totalExhaustFigure } from './figures/total-exhaust';
export { airChanges } from './formulas/airChanges';
export {
  DIFFUSER_DISTANCE,
  KITCHEN_CHANGES,
  KITCHEN_SUPPLY_CHANGES,
  MAKE_UP_DIFFERENCE,
  MAKE_UP_DIFFERENCE_HELPING,
  MAKE_UP_TEMPERATURE,
  MAKE_UP_TEMPERED,
  ROOM_HUMIDITY,
  ROOM_SUCTION,
  WORK_TEMPERATURE,
} from './formulas/airLimits';
export { atmosphericPressure } from './formulas/atmosphere';
export { dewPoint, dewPointRecord } from './formulas/dewPoint';
export { moistEnthalpy, temperatureOfEnthalpy } from './formulas/enthalpy';
export { humidityRatio, humidityRatioOfRelative, relativeHumidity, vapourPressure } from './formulas/humidityRatio';
export { type MachineHeatInputs, machineHeat } from './formulas/machineHeat';
export { makeUpAir, makeUpDifference } from './formulas/makeUpAir';
export { moistDensity, moistVolume } from './formulas/moistVolume';
export { risingHumidity } from './formulas/risingHumidity';
export { saturationPressure } from './formulas/saturationPressure';
export { airHeat } from './formulas/support/airHeat';
export { FILM_RESISTANCES, INSULATIONS, rValue } from './formulas/support/filmResistances';
export { mixAir } from './formulas/support/mixAir';
export { measureMoistAir, measureMoistAirOfRelative } from './formulas/support/moistAir';
export { KELVIN, STANDARD_DENSITY, STANDARD_PRESSURE } from './formulas/support/standardAir';
export { vapourFlow } from './formulas/vapourFlow';
export { airTemperature, filmR, innerSurface } from './formulas/wallTemperature';
export { humidityRatioOfWetBulb, wetBulb } from './formulas/wetBulb';
