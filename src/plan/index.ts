export * from './createLinePlan';
export * from './createPlan';
export * from './jointFrame';
export * from './line/lineSides';
export * from './mirrorLine';
export * from './planSchema';
export * from './resolveSheet';
export { type PlanTransform, transformPlan } from './transformPlan';
