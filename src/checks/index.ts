export { CHECKS } from './registry';
export { deriveWorstVerdict, runChecks } from './runChecks';
export { fitHood, LIP_ABOVE_DECK, leastOverhang } from './support/hoods';
export * from './types';
