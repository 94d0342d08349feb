import { type Formula, formula } from '../formula';
import { dryingTime, dryingTimeRecord } from './dryingTime';
import { PEAK_FORMULAS } from './peak';
import { practicalRate, practicalRateRecord } from './practicalRate';
import { queueLength, queueLengthRecord } from './queue';
import { rackRate, rackRateRecord } from './rackRate';
import { racksNeeded, racksNeededRecord } from './racksNeeded';
import { racksOfWare, racksOfWareRecord } from './racksOfWare';
import { racksOnTable, racksOnTableRecord } from './racksOnTable';
import { twoStationRate, twoStationRateRecord } from './twoStations';

export { dryingTime, dryingTimeRecord } from './dryingTime';
export {
  peakBacklog,
  peakBacklogRecord,
  peakClearing,
  peakClearingRecord,
  peakLongestWait,
  peakLongestWaitRecord,
  type RushInputs,
} from './peak';
export { PRACTICAL_SHARE, practicalRate, practicalRateRecord } from './practicalRate';
export { QUEUE_COUNTS, type QueueCount, queueLength, queueLengthRecord } from './queue';
export { rackRate, rackRateRecord } from './rackRate';
export { racksNeeded, racksNeededRecord } from './racksNeeded';
export { racksOfWare, racksOfWareRecord } from './racksOfWare';
export { racksOnTable, racksOnTableRecord, type TableRacksInputs } from './racksOnTable';
export { twoStationRate, twoStationRateRecord } from './twoStations';

/** Formulas of capacity, by the order of the manual. */
export const CAPACITY_FORMULAS: readonly Formula[] = [
  formula(rackRateRecord, rackRate),
  formula(practicalRateRecord, practicalRate),
  formula(racksNeededRecord, racksNeeded),
  formula(racksOfWareRecord, racksOfWare),
  formula(racksOnTableRecord, racksOnTable),
  formula(dryingTimeRecord, dryingTime),
  formula(queueLengthRecord, queueLength),
  formula(twoStationRateRecord, twoStationRate),
  ...PEAK_FORMULAS,
];
