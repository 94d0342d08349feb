export { deriveConfiguration, type JoinedTable } from './deriveConfiguration';
export { type Extent, followWater, profileHeightAt, type Water } from './followWater';
export * from './types';
