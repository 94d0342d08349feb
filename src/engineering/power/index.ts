import { type Formula, formula } from '../formula';
import type { Limit } from '../limit';
import type { RuleRecord } from '../rule';
import { ampacity, ampacityRecord, ampacityTableRule } from './ampacity';
import { breakerSize, breakerSizeRecord } from './breakerSize';
import { loadCurrent, loadCurrentRecord } from './loadCurrent';
import { BRANCH_DROP, TOTAL_DROP, voltageDrop, voltageDropRecord } from './voltageDrop';
import { voltsToGround, voltsToGroundRecord } from './voltsToGround';
import { wireResistance, wireResistanceRecord } from './wireResistance';
import {
  panelDoorRule,
  WORKING_PROJECTION,
  workingDepth,
  workingDepthRecord,
  workingHeight,
  workingHeightRecord,
  workingWidth,
  workingWidthRecord,
} from './workingSpace';

export {
  type AmpacityBounds,
  type AmpacityTable,
  ampacity,
  ampacityRecord,
  boundAmpacity,
  HELD_AMPACITY,
  judgeAmpacityTable,
  TERMINALS,
  type Terminal,
} from './ampacity';
export { breakerSize, breakerSizeRecord, designCurrent, LOAD_KINDS, type LoadKind, STANDARD_BREAKERS } from './breakerSize';
export { CONDUCTOR_SOURCES, chooseConductor, SMALL_WIRE_BREAKERS, terminalOf } from './conductor';
export { type LoadCurrentInputs, loadCurrent, loadCurrentRecord, PHASES, type Phases } from './loadCurrent';
export { BRANCH_DROP, CIRCUITS, type Circuit, TOTAL_DROP, voltageDrop, voltageDropRecord } from './voltageDrop';
export { SUPPLY_KINDS, type SupplyKind, voltsToGround } from './voltsToGround';
export { CIRCULAR_MILS, gaugeOf, WIRE_SIZES, type WireSize } from './wire';
export { wireResistance, wireResistanceRecord } from './wireResistance';
export {
  WORKING_CONDITIONS,
  WORKING_PROJECTION,
  type WorkingCondition,
  workingDepth,
  workingDepthRecord,
  workingHeight,
  workingWidth,
} from './workingSpace';

/** Formulas of power, by the order of the manual. */
export const POWER_FORMULAS: readonly Formula[] = [
  formula(loadCurrentRecord, loadCurrent),
  formula(breakerSizeRecord, breakerSize),
  formula(ampacityRecord, ampacity),
  formula(wireResistanceRecord, wireResistance),
  formula(voltageDropRecord, voltageDrop),
  formula(voltsToGroundRecord, voltsToGround),
  formula(workingDepthRecord, workingDepth),
  formula(workingWidthRecord, workingWidth),
  formula(workingHeightRecord, workingHeight),
];

export const POWER_LIMITS: readonly Limit[] = [BRANCH_DROP, TOTAL_DROP, WORKING_PROJECTION];

export const POWER_RULES: readonly RuleRecord[] = [ampacityTableRule, panelDoorRule];
