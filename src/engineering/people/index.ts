import { type Formula, formula } from '../formula';
import type { Limit } from '../limit';
import type { RuleRecord } from '../rule';
import { gripMultiplier, gripMultiplierRecord, handsBeforeAnkles, handsBeforeAnklesRecord } from './grip';
import { floorLegs, floorLegsRecord, spacingRule } from './legs';
import { frequencyMultiplier, frequencyMultiplierRecord, liftingDurationRule } from './liftingFrequency';
import { LIFTING_CLIMATE, LIFTING_CONTAINER, liftingIndex, liftingIndexRecord, liftingLimit, liftingLimitRecord } from './liftingLimit';
import { reachOverDepth, reachOverDepthRecord } from './reach';
import {
  accessibleRouteRule,
  DOOR_HEIGHT,
  DOOR_WIDTH,
  EXIT_HEIGHT,
  EXIT_PROJECTION,
  EXIT_WIDTH,
  hairpinRule,
  ROUTE_WIDTH,
  routeExemptionRule,
  TURNING_CIRCLE,
} from './route';
import { SURROUNDING_LIMITS } from './surroundings';

export { BODIES, BODIES_SOURCE, type BodyMeasures, CIVILIAN_ELBOW, CIVILIAN_ELBOW_SOURCE } from './bodies';
export { GRIPS, type Grip, gripMultiplier, handsBeforeAnkles } from './grip';
export { floorLegs, type GapCase, judgeGap, SPACING_RULES, type SpacingRule } from './legs';
export { frequencyMultiplier, LIFTING_DURATIONS, type LiftingDuration, liftingDuration, liftingDurationRule } from './liftingFrequency';
export {
  LIFTING_CLIMATE,
  LIFTING_CONTAINER,
  LIFTING_FORMS,
  type LiftInputs,
  type LiftingForm,
  type LiftingMultipliers,
  liftingIndex,
  liftingIndexRecord,
  liftingLimit,
  liftingLimitRecord,
  liftingLoad,
  liftingMultipliers,
} from './liftingLimit';
export { reachOverDepth, reachOverDepthRecord } from './reach';
export {
  CLEAR_FLOOR,
  DOOR_HEIGHT,
  DOOR_PULL,
  DOOR_PUSH,
  DOOR_WIDTH,
  EXIT_HEIGHT,
  EXIT_PROJECTION,
  EXIT_WIDTH,
  judgeAccessibleRoute,
  judgeHalfTurn,
  judgeRouteExemption,
  ROUTE_WIDTH,
  routeExemptionRule,
  type Stretch,
  TURNING_CIRCLE,
  TURNING_T,
  turningTArea,
} from './route';
export {
  AISLE_WIDTH,
  CEILING_MILITARY,
  CLEAN_WARE_HEIGHT,
  DISH_ROOM_AREA,
  HAND_SINK_DISTANCE,
  LIGHT_MILITARY,
  LIGHT_UTENSILS,
  LIGHT_WASHING,
} from './surroundings';
export { type WayWidths, wayWidths } from './wayWidths';
export {
  WORK_HEIGHT_RANGES,
  WORK_HEIGHT_RANGES_SOURCE,
  WORK_HEIGHT_RULES,
  WORK_HEIGHT_SOURCES,
  WORK_TASKS,
  type WorkHeightRule,
  type WorkTask,
  workHeightBand,
} from './workHeight';

/** Formulas of people, by the order of the manual. */
export const PEOPLE_FORMULAS: readonly Formula[] = [
  formula(liftingLimitRecord, liftingLimit),
  formula(liftingIndexRecord, liftingIndex),
  formula(frequencyMultiplierRecord, frequencyMultiplier),
  formula(gripMultiplierRecord, gripMultiplier),
  formula(handsBeforeAnklesRecord, handsBeforeAnkles),
  formula(reachOverDepthRecord, reachOverDepth),
  formula(floorLegsRecord, floorLegs),
];

export const PEOPLE_LIMITS: readonly Limit[] = [
  EXIT_WIDTH,
  EXIT_HEIGHT,
  EXIT_PROJECTION,
  ROUTE_WIDTH,
  DOOR_WIDTH,
  DOOR_HEIGHT,
  TURNING_CIRCLE,
  ...LIFTING_CLIMATE,
  ...LIFTING_CONTAINER,
  ...SURROUNDING_LIMITS,
];

export const PEOPLE_RULES: readonly RuleRecord[] = [accessibleRouteRule, hairpinRule, routeExemptionRule, spacingRule, liftingDurationRule];
