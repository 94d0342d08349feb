import { type Formula, formula } from '../../formula';
import {
  exhaustByArea,
  exhaustByAreaRecord,
  exhaustByCapture,
  exhaustByCaptureRecord,
  exhaustByFace,
  exhaustByFaceRecord,
  exhaustByLength,
  exhaustByLengthRecord,
} from './exhaustRules';
import { makeUpAir, makeUpAirRecord, makeUpDifference, makeUpDifferenceRecord } from './makeUpAir';
import { netExhaust, netExhaustRecord } from './netExhaust';
import { olderExhaustByArea, olderExhaustByAreaRecord, olderExhaustByPerimeter, olderExhaustByPerimeterRecord } from './olderRule';
import { exhaustByFloor, exhaustByFloorRecord, waivedHoodExhaust, waivedHoodExhaustRecord } from './waivedHood';

export {
  exhaustByArea,
  exhaustByAreaRecord,
  exhaustByCapture,
  exhaustByCaptureRecord,
  exhaustByFace,
  exhaustByFaceRecord,
  exhaustByLength,
  exhaustByLengthRecord,
} from './exhaustRules';
export { EXHAUST_RULES, type ExhaustRule, type HoodShape } from './hoodExhaust';
export { MOST_DEFICIT_SHARE, makeUpAir, makeUpAirRecord, makeUpDifference, makeUpDifferenceRecord } from './makeUpAir';
export { netExhaust, netExhaustRecord } from './netExhaust';
export { olderExhaustByArea, olderExhaustByAreaRecord, olderExhaustByPerimeter, olderExhaustByPerimeterRecord } from './olderRule';
export { exhaustByFloor, exhaustByFloorRecord, waivedHoodExhaust, waivedHoodExhaustRecord } from './waivedHood';

/** What a hood, or a room without one, must take away and be given back. */
export const HOOD_FORMULAS: readonly Formula[] = [
  formula(exhaustByLengthRecord, exhaustByLength),
  formula(exhaustByFaceRecord, exhaustByFace),
  formula(exhaustByAreaRecord, exhaustByArea),
  formula(olderExhaustByAreaRecord, olderExhaustByArea),
  formula(olderExhaustByPerimeterRecord, olderExhaustByPerimeter),
  formula(exhaustByCaptureRecord, exhaustByCapture),
  formula(netExhaustRecord, netExhaust),
  formula(makeUpAirRecord, makeUpAir),
  formula(makeUpDifferenceRecord, makeUpDifference),
  formula(waivedHoodExhaustRecord, waivedHoodExhaust),
  formula(exhaustByFloorRecord, exhaustByFloor),
];
