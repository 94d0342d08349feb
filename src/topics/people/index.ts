export { rule as handSinkDistanceFigure } from './figures/hand-sink-distance';
export { deriveLiftPictures, type LiftPicture } from './figures/support/liftPicture';
export { gripMultiplier, handsBeforeAnkles } from './formulas/grip';
export { frequencyMultiplier, liftingDuration } from './formulas/liftingFrequency';
export {
  LIFTING_CLIMATE,
  LIFTING_CONTAINER,
  type LiftInputs,
  liftingIndex,
  liftingLimit,
  liftingLoad,
  liftingMultipliers,
} from './formulas/liftingLimit';
export { reachOverDepth } from './formulas/reach';
export { BODIES, type BodyMeasures, CIVILIAN_ELBOW } from './formulas/support/bodies';
export { WORK_HEIGHT_RANGES, workHeightBand } from './formulas/support/workHeight';
export { DISH_ROOM_AREA, HAND_SINK_DISTANCE, LIGHT_MILITARY, LIGHT_UTENSILS, LIGHT_WASHING } from './formulas/surroundings';
