import { CHECKS, type Check } from '../checks';
import { SERVICE_CHECKS } from './registry';

export { SERVICE_CHECKS };

/** Every check there is: of the line and its room, then of what serves it. */
export const ALL_CHECKS: readonly Check[] = [...CHECKS, ...SERVICE_CHECKS];
export type { HoldingMessages } from './support/holdReading';
