export { type Aisle, aisleSource, describeAisle, describePass, type Pass, passSource } from './checks/support/aisles';
export { DRAWING_TOLERANCE, isAtCollar, isBody, isOver, isUnder } from './checks/support/bodies';
export { centrePinch } from './checks/support/centrePinch';
export { findCrossings } from './checks/support/crossings';
export { fitsAfter } from './checks/support/fitsAfter';
export { type Before, type Body, frontFace, measureFreeDepth } from './checks/support/freeDepth';
export { describePinch, type Pinch } from './checks/support/pinch';
export { raiseShelf } from './checks/support/raiseShelf';
export { ROOM_DOOR } from './checks/support/roomDoor';
export { AISLE_WIDTH } from './formulas/aisleWidth';
export { floorLegs, judgeGap } from './formulas/legs';
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
  TURNING_CIRCLE,
  TURNING_T,
  turningTArea,
} from './formulas/route';
export { wayWidths } from './formulas/support/wayWidths';
