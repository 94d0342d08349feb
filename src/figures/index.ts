export { deriveFigures } from './deriveFigures';
export { figureWords } from './figureWords';
export { deriveHeatUnitsPicture, type HeatUnitsPicture } from './pictures/heatUnitsPicture';
export { readingsOf } from './readingsOf';
export { FIGURES } from './registry';
export * from './types';
