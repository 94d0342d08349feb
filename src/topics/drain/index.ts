export { AIR_GAP_RULES, airGapWallRule, judgeAirGapNearWall, supplyAirGap, supplyAirGapRecord, wasteAirGap } from './formulas/airGap';
export { branchUnits } from './formulas/branchUnits';
export { drainFlow, drainSpeed, SCOURING_SPEED } from './formulas/drainFlow';
export { dumpStorage } from './formulas/dumpStorage';
export { fixtureUnitsOfFlow } from './formulas/fixtureUnits';
export { greaseInterceptor } from './formulas/greaseInterceptor';
export {
  DIRECT_DRAIN_DISTANCE,
  INDIRECT_WASTE_LENGTH,
  judgeDirectDrain,
  judgeUntrappedWaste,
  WARE_SINK_DRAIN_DISTANCE,
} from './formulas/indirectWaste';
export { UNDERGROUND_BRANCH_SIZE } from './formulas/leastBranch';
export { fallOver, leastSlope } from './formulas/leastSlope';
export { nominalSize } from './formulas/nominalSize';
export { receptorUnits } from './formulas/receptorUnits';
export { dishMachineRow, dishMachineUnits, findFixtureValue, fixtureSource, floorDrainRow } from './formulas/support/fixtureTable';
