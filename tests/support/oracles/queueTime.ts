import type { QueueCount } from '../../../src/topics/capacity';

/** One station with chance arrivals, as `queueLength` takes it. */
export interface QueueTimeInputs {
  arrivalsPerH: number;
  serviceS: number;
  serviceCv2: number;
  counts: QueueCount;
}

/** Mean time in seconds that one stands there (Pollaczek and Khinchine). Holds for a load below 1. */
export function queueTime({ arrivalsPerH, serviceS, serviceCv2, counts }: QueueTimeInputs): number {
  const load = (arrivalsPerH * serviceS) / 3600;
  const waiting = (load * serviceS * (1 + serviceCv2)) / (2 * (1 - load));
  return counts === 'waiting' ? waiting : waiting + serviceS;
}
