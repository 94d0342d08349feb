export { deriveConfiguration, type JoinedTable } from './deriveConfiguration';
export { deriveScene } from './deriveScene';
export { findWidestWay, measureWay, type Way } from './findWidestWay';
export { floorObstacles } from './floorObstacles';
export { type Extent, followWater, profileHeightAt, type Water } from './followWater';
export { measureWalls } from './measureWalls';
export { createListKeeper, memoizeByIdentity } from './memoizeByIdentity';
export { stepBack } from './stepBack';
export * from './types';
