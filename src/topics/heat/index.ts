export { rule as sanitizingHeaterFigure } from './figures/sanitizing-heater';
export { deriveHeatUnitsPicture, type HeatUnitsPicture } from './figures/support/heatUnitsPicture';
export { deriveRinse } from './figures/support/rinseHeat';
export { BOOSTER_CLEAR, BOOSTER_DISTANCE, boosterPower } from './formulas/boosterPower';
export { firstHeatUp } from './formulas/firstHeatUp';
export { accumulateHeatUnits, HEAT_UNITS, heatUnitRate, heatUnits } from './formulas/heatUnits';
export { heatUpTime } from './formulas/heatUpTime';
export { INSTRUMENT_LIMITS } from './formulas/instruments';
export { recordedHeatUnits } from './formulas/recordedHeatUnits';
export { heldCycle, heldCycleRecord, heldRackRate, heldRackRateRecord, rinseHold } from './formulas/rinseHold';
export {
  HAND_SINK_2017,
  HAND_SINK_2022,
  judgeManifold,
  MACHINE_CLASSES,
  MANUAL_SANITIZING,
  MANUAL_SANITIZING_TIME,
  manifoldLimit,
  SUPPLY_WATER,
  UTENSIL_SURFACE,
  washLimit,
} from './formulas/temperatures';
