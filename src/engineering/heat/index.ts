import { type Formula, formula } from '../formula';
import type { Limit } from '../limit';
import { BOOSTER_CLEAR, BOOSTER_DISTANCE, boosterPower, boosterPowerRecord } from './boosterPower';
import { firstHeatUp, firstHeatUpRecord } from './firstHeatUp';
import { HEAT_UNITS, heatUnits, heatUnitsRecord } from './heatUnits';
import { heatUpTime, heatUpTimeRecord } from './heatUpTime';
import { INSTRUMENT_LIMITS } from './instruments';
import { recordedHeatUnits, recordedHeatUnitsRecord } from './recordedHeatUnits';
import { recoveredShare, recoveredShareRecord, warmedSupply, warmedSupplyRecord } from './recoveredShare';
import { heldCycle, heldCycleRecord, heldRackRate, heldRackRateRecord, rinseHold, rinseHoldRecord } from './rinseHold';
import { TEMPERATURE_LIMITS } from './temperatures';

export { BOOSTER_CLEAR, BOOSTER_DISTANCE, boosterPower, boosterPowerRecord } from './boosterPower';
export { firstHeatUp, firstHeatUpRecord, HEATING_ORDERS, type HeatingOrder } from './firstHeatUp';
export { accumulateHeatUnits, HEAT_UNITS, heatUnitRate, heatUnits } from './heatUnits';
export { heatUpTime, heatUpTimeRecord } from './heatUpTime';
export { INSTRUMENT_LIMITS } from './instruments';
export { accumulateRecordedHeatUnits, type RecordedHeatUnitInputs, recordedHeatUnits, recordedHeatUnitsRecord } from './recordedHeatUnits';
export { recoveredShare, recoveredShareRecord, warmedSupply } from './recoveredShare';
export {
  heldCycle,
  heldCycleRecord,
  heldRackRate,
  heldRackRateRecord,
  type RinseHoldInputs,
  rinseHold,
  rinseHoldRecord,
} from './rinseHold';
export {
  HAND_SINK_2017,
  HAND_SINK_2022,
  judgeManifold,
  MACHINE_CLASSES,
  MANUAL_SANITIZING,
  MANUAL_SANITIZING_TIME,
  type MachineClass,
  manifoldLimit,
  type Sanitizing,
  SUPPLY_WATER,
  UTENSIL_SURFACE,
  washLimit,
} from './temperatures';

/** Formulas of heat, by the order of the manual. */
export const HEAT_FORMULAS: readonly Formula[] = [
  formula(boosterPowerRecord, boosterPower),
  formula(rinseHoldRecord, rinseHold),
  formula(heldCycleRecord, heldCycle),
  formula(heldRackRateRecord, heldRackRate),
  formula(heatUpTimeRecord, heatUpTime),
  formula(firstHeatUpRecord, firstHeatUp),
  formula(recoveredShareRecord, recoveredShare),
  formula(warmedSupplyRecord, warmedSupply),
  formula(heatUnitsRecord, heatUnits),
  formula(recordedHeatUnitsRecord, recordedHeatUnits),
];

export const HEAT_LIMITS: readonly Limit[] = [...TEMPERATURE_LIMITS, HEAT_UNITS, BOOSTER_DISTANCE, BOOSTER_CLEAR, ...INSTRUMENT_LIMITS];
