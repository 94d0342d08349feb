export { findHoodsOver, fitHood, isOverStand, LIP_ABOVE_DECK, leastOverhang } from './checks/support/hoods';
export { findGoverningExhaust, findOpenExhaust, rule as hoodExhaustFigure } from './figures/hood-exhaust';
export { exhaustByArea, exhaustByCapture, exhaustByFace, exhaustByLength } from './formulas/exhaustRules';
export { CAVITY_AIR, EXHAUST_AT_MACHINES, NONCANOPY_HEIGHT, NONCANOPY_SETBACK, UNLISTED_HOOD_EXHAUST } from './formulas/hoodLimits';
export { netExhaust } from './formulas/netExhaust';
export { olderExhaustByArea, olderExhaustByPerimeter } from './formulas/olderRule';
export { exhaustByFloor, waivedHoodExhaust } from './formulas/waivedHood';
