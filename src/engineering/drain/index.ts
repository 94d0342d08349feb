import { type Formula, formula } from '../formula';
import type { Limit } from '../limit';
import type { RuleRecord } from '../rule';
import { airGapWallRule, supplyAirGap, supplyAirGapRecord, wasteAirGap, wasteAirGapRecord } from './airGap';
import { branchUnits, branchUnitsRecord } from './branchUnits';
import { drainFlow, drainFlowRecord, drainSpeed, drainSpeedRecord } from './drainFlow';
import { dumpStorage, dumpStorageRecord } from './dumpStorage';
import { fixtureUnitsOfFlow, fixtureUnitsOfFlowRecord } from './fixtureUnits';
import { greaseInterceptor, greaseInterceptorRecord } from './greaseInterceptor';
import {
  DIRECT_DRAIN_DISTANCE,
  directDrainRule,
  INDIRECT_WASTE_LENGTH,
  indirectTrapRule,
  UNTRAPPED_WASTE_LENGTH,
  UNTRAPPED_WASTE_LEVEL,
  WARE_SINK_DRAIN_DISTANCE,
} from './indirectWaste';
import { UNDERGROUND_BRANCH_SIZE } from './leastBranch';
import { fallOver, fallOverRecord, leastSlope, leastSlopeRecord } from './leastSlope';
import { nominalSize, nominalSizeRecord } from './nominalSize';
import { receptorUnits, receptorUnitsRecord } from './receptorUnits';

export {
  AIR_GAP_RULES,
  type AirGapRule,
  airGapWallRule,
  judgeAirGapNearWall,
  supplyAirGap,
  supplyAirGapRecord,
  wasteAirGap,
  wasteAirGapRecord,
} from './airGap';
export { branchUnits, branchUnitsRecord, DRAIN_KINDS, type DrainKind } from './branchUnits';
export { type DrainFlowInputs, drainFlow, drainFlowRecord, drainSpeed, drainSpeedRecord, SCOURING_SPEED } from './drainFlow';
export { dumpStorage, dumpStorageRecord } from './dumpStorage';
export {
  dishMachineRow,
  dishMachineUnits,
  FIXTURE_CODES,
  FIXTURE_VALUES,
  type FixtureCode,
  type FixtureValue,
  findFixtureValue,
  fixtureSource,
  floorDrainRow,
} from './fixtureTable';
export { FIXTURE_UNIT_RULES, type FixtureUnitRule, fixtureUnitsOfFlow, fixtureUnitsOfFlowRecord } from './fixtureUnits';
export { greaseInterceptor, greaseInterceptorRecord } from './greaseInterceptor';
export {
  DIRECT_DRAIN_DISTANCE,
  type DirectDrainCase,
  INDIRECT_WASTE_LENGTH,
  judgeDirectDrain,
  judgeUntrappedWaste,
  UNTRAPPED_WASTE_LENGTH,
  UNTRAPPED_WASTE_LEVEL,
  WARE_SINK_DRAIN_DISTANCE,
} from './indirectWaste';
export { UNDERGROUND_BRANCH_SIZE } from './leastBranch';
export { fallOver, leastSlope } from './leastSlope';
export { nominalSize } from './nominalSize';
export { receptorUnits, receptorUnitsRecord } from './receptorUnits';

/** Formulas of the drain, by the order of the manual. */
export const DRAIN_FORMULAS: readonly Formula[] = [
  formula(drainFlowRecord, drainFlow),
  formula(drainSpeedRecord, drainSpeed),
  formula(nominalSizeRecord, nominalSize),
  formula(leastSlopeRecord, leastSlope),
  formula(fallOverRecord, fallOver),
  formula(fixtureUnitsOfFlowRecord, fixtureUnitsOfFlow),
  formula(receptorUnitsRecord, receptorUnits),
  formula(branchUnitsRecord, branchUnits),
  formula(supplyAirGapRecord, supplyAirGap),
  formula(wasteAirGapRecord, wasteAirGap),
  formula(dumpStorageRecord, dumpStorage),
  formula(greaseInterceptorRecord, greaseInterceptor),
];

export const DRAIN_LIMITS: readonly Limit[] = [
  DIRECT_DRAIN_DISTANCE,
  INDIRECT_WASTE_LENGTH,
  UNTRAPPED_WASTE_LEVEL,
  UNTRAPPED_WASTE_LENGTH,
  WARE_SINK_DRAIN_DISTANCE,
  UNDERGROUND_BRANCH_SIZE,
];

export const DRAIN_RULES: readonly RuleRecord[] = [directDrainRule, indirectTrapRule, airGapWallRule];
