export * from './types';
export { CHECKS } from './registry';
export { deriveWorstVerdict, runChecks } from './runChecks';
