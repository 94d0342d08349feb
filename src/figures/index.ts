export { deriveFigures } from './deriveFigures';
export { figureWords } from './figureWords';
export { deriveFanPicture, type FanPicture, type FanPicturePoint } from './pictures/fanPicture';
export { deriveHeatUnitsPicture, type HeatUnitsPicture } from './pictures/heatUnitsPicture';
export { readingsOf } from './readingsOf';
export { FIGURES } from './registry';
export { findGoverningUnits } from './rules/drain-units';
export { nearestDrain, outletOf } from './support/drains';
export * from './types';
