import type { Check } from '../checks';
import { check as peakKept } from './rules/peak-kept';

/** Every check that stands on a figure or on the building's services, in the order of the manual. */
export const SERVICE_CHECKS: readonly Check[] = [peakKept];
