import { type Formula, formula } from '../formula';
import type { Limit } from '../limit';
import type { RuleRecord } from '../rule';
import { demandAfterStorage, demandAfterStorageRecord } from './demandAfterStorage';
import { INSTANT_HEATER_FLOW, INSTANT_HEATER_WATER } from './fixtureDemand';
import { hardnessMass, hardnessMassRecord, SUPPLY_HARDNESS } from './hardness';
import { heaterInput, heaterInputRecord } from './heaterInput';
import { hotWaterDemand, hotWaterDemandRecord } from './hotWaterDemand';
import { instantDemand, instantDemandRecord } from './instantDemand';
import { machineEnergy, machineEnergyRecord } from './machineEnergy';
import { pipeLoss, pipeLossRecord } from './pipeLoss';
import { pipeSpeed, pipeSpeedRecord } from './pipeSpeed';
import { pressureLeft, pressureLeftRecord } from './pressureLeft';
import { rackWater, rackWaterRecord } from './rackWater';
import { rinseFlow, rinseFlowRecord } from './rinseFlow';
import { FOOD_CODE_RINSE_PRESSURE, OLDER_RINSE_PRESSURE, pressureGaugeRule, rinsePressureRule, STATIC_PRESSURE } from './rinsePressure';
import { runningCost, runningCostRecord } from './runningCost';
import { sinkVolume, sinkVolumeRecord } from './sinkVolume';
import { OLDER_SPRAY_VALVE, SPRAY_OPEN_TIME, sprayValveLimit, sprayValveLimitRecord } from './sprayValveLimit';
import { sprayWater, sprayWaterRecord } from './sprayWater';
import { waterHeating, waterHeatingRecord } from './waterHeating';

export { demandAfterStorage, demandAfterStorageRecord } from './demandAfterStorage';
export { EFFICIENCY_CRITERIA, type EfficiencyCriterion, findEfficiencyCriterion } from './efficiencyCriteria';
export {
  FIXTURE_DEMAND_SOURCE,
  FIXTURE_DEMANDS,
  type FixtureDemand,
  INSTANT_HEATER_FLOW,
  INSTANT_HEATER_WATER,
  STORAGE_SHARES,
} from './fixtureDemand';
export { hardnessMass, hardnessMassRecord, SUPPLY_HARDNESS } from './hardness';
export { HEATER_RULES, type HeaterRule, heaterInput, heaterInputRecord } from './heaterInput';
export { type HotWaterDemandInputs, hotWaterDemand, hotWaterDemandRecord } from './hotWaterDemand';
export { type InstantDemandInputs, instantDemand, instantDemandRecord } from './instantDemand';
export { machineEnergy, machineEnergyRecord } from './machineEnergy';
export { PIPE_LOSS_FORMS, PIPE_SMOOTHNESS, type PipeLossForm, pipeLoss, pipeLossRecord } from './pipeLoss';
export { pipeSpeed, pipeSpeedRecord } from './pipeSpeed';
export { pressureLeft, pressureLeftRecord } from './pressureLeft';
export { type RackWaterInputs, rackWater, rackWaterRecord } from './rackWater';
export { rinseFlow, rinseFlowRecord } from './rinseFlow';
export {
  FOOD_CODE_RINSE_PRESSURE,
  judgePressureGauge,
  judgeRinsePressure,
  OLDER_RINSE_PRESSURE,
  RINSE_PRESSURE_RULES,
  type RinsePressureRule,
  rinsePressureBand,
  STATIC_PRESSURE,
} from './rinsePressure';
export { runningCost, runningCostRecord } from './runningCost';
export { sinkVolume, sinkVolumeRecord } from './sinkVolume';
export { OLDER_SPRAY_VALVE, SPRAY_OPEN_TIME, sprayValveLimit, sprayValveLimitRecord } from './sprayValveLimit';
export { sprayWater, sprayWaterRecord } from './sprayWater';
export { WATER_CONSTANTS, type WaterConstants, waterHeating, waterHeatingRecord } from './waterHeating';

/** Formulas of water, by the order of the manual. */
export const WATER_FORMULAS: readonly Formula[] = [
  formula(rackWaterRecord, rackWater),
  formula(sprayWaterRecord, sprayWater),
  formula(sprayValveLimitRecord, sprayValveLimit),
  formula(sinkVolumeRecord, sinkVolume),
  formula(hotWaterDemandRecord, hotWaterDemand),
  formula(demandAfterStorageRecord, demandAfterStorage),
  formula(instantDemandRecord, instantDemand),
  formula(heaterInputRecord, heaterInput),
  formula(rinseFlowRecord, rinseFlow),
  formula(pipeSpeedRecord, pipeSpeed),
  formula(pipeLossRecord, pipeLoss),
  formula(pressureLeftRecord, pressureLeft),
  formula(hardnessMassRecord, hardnessMass),
  formula(waterHeatingRecord, waterHeating),
  formula(machineEnergyRecord, machineEnergy),
  formula(runningCostRecord, runningCost),
];

export const WATER_LIMITS: readonly Limit[] = [
  FOOD_CODE_RINSE_PRESSURE,
  OLDER_RINSE_PRESSURE,
  STATIC_PRESSURE,
  SUPPLY_HARDNESS,
  INSTANT_HEATER_WATER,
  INSTANT_HEATER_FLOW,
  OLDER_SPRAY_VALVE,
  SPRAY_OPEN_TIME,
];

export const WATER_RULES: readonly RuleRecord[] = [rinsePressureRule, pressureGaugeRule];
