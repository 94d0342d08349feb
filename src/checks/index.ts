export * from './types';
export { deriveWorstVerdict, runChecks } from './runChecks';
