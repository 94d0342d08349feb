export { deriveConfiguration, type JoinedTable } from './deriveConfiguration';
export { deriveScene } from './deriveScene';
export { type FloorObstacle, floorObstacles } from './floorObstacles';
export { END_RIM_HEIGHT, type Extent, followWater, profileHeightAt, type Water } from './followWater';
export { createListKeeper, memoizeByIdentity } from './memoizeByIdentity';
export * from './types';
