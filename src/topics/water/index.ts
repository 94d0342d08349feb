export { feedOf, needFeed } from './figures/support/feed';
export { demandInputs, drawnAtOnce, hotWaterFixtures } from './figures/support/fixtures';
export { rinseOf } from './figures/support/rinseWater';
export { askBowls, bowlsOf, bowlVolume } from './figures/support/sinkBowls';
export { needYear } from './figures/support/yearWater';
export { rule as waterPerYearFigure } from './figures/water-per-year';
export { demandAfterStorage } from './formulas/demandAfterStorage';
export {
  FIXTURE_DEMAND_SOURCE,
  FIXTURE_DEMANDS,
  INSTANT_HEATER_FLOW,
  INSTANT_HEATER_WATER,
  STORAGE_SHARES,
} from './formulas/fixtureDemand';
export { hardnessMass, SUPPLY_HARDNESS } from './formulas/hardness';
export { HEATER_RULES, type HeaterRule, heaterInput, heaterInputRecord } from './formulas/heaterInput';
export { hotWaterDemand } from './formulas/hotWaterDemand';
export { instantDemand } from './formulas/instantDemand';
export { machineEnergy, machineEnergyRecord } from './formulas/machineEnergy';
export { PIPE_SMOOTHNESS, pipeLoss } from './formulas/pipeLoss';
export { pipeSpeed } from './formulas/pipeSpeed';
export { pressureLeft } from './formulas/pressureLeft';
export { rackWater } from './formulas/rackWater';
export {
  FOOD_CODE_RINSE_PRESSURE,
  judgePressureGauge,
  judgeRinsePressure,
  OLDER_RINSE_PRESSURE,
  rinsePressureBand,
  STATIC_PRESSURE,
} from './formulas/rinsePressure';
export { runningCost, runningCostRecord } from './formulas/runningCost';
export { sinkVolume } from './formulas/sinkVolume';
export { OLDER_SPRAY_VALVE, SPRAY_OPEN_TIME, sprayValveLimit } from './formulas/sprayValveLimit';
export { sprayWater } from './formulas/sprayWater';
export { EFFICIENCY_CRITERIA, findEfficiencyCriterion } from './formulas/support/efficiencyCriteria';
export { HEAT_J_PER_M3_K } from './formulas/support/waterHeat';
export { waterHeating, waterHeatingRecord } from './formulas/waterHeating';
