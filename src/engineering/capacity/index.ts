import { type Formula, formula } from '../formula';
import { beltRate, beltRateRecord, conveyorRate, conveyorRateRecord } from './conveyorRate';
import { dryingRacks, dryingRacksRecord } from './dryingRacks';
import { dryingTime, dryingTimeRecord } from './dryingTime';
import { lostShare, lostShareRecord, waitingAtServers, waitingAtServersRecord, waitingShare, waitingShareRecord } from './erlang';
import { numberAtFullQueue, numberAtFullQueueRecord, turnedAwayShare, turnedAwayShareRecord } from './fullQueue';
import { PEAK_FORMULAS } from './peak';
import { practicalRate, practicalRateRecord } from './practicalRate';
import { queueLength, queueLengthRecord, queueTime, queueTimeRecord } from './queue';
import { rackRate, rackRateRecord } from './rackRate';
import { racksNeeded, racksNeededRecord } from './racksNeeded';
import { racksOfWare, racksOfWareRecord } from './racksOfWare';
import { racksOnTable, racksOnTableRecord } from './racksOnTable';
import { diningArea, diningAreaRecord, seatsNeeded, seatsNeededRecord } from './seats';
import { twoStationRate, twoStationRateRecord } from './twoStations';

export { beltRate, conveyorRate } from './conveyorRate';
export { dryingRacks } from './dryingRacks';
export { dryingTime, dryingTimeRecord } from './dryingTime';
export { lostShare, waitingAtServers, waitingShare } from './erlang';
export { numberAtFullQueue, turnedAwayShare } from './fullQueue';
export {
  peakBacklog,
  peakBacklogRecord,
  peakClearing,
  peakClearingRecord,
  peakLongestWait,
  peakLongestWaitRecord,
  peakTotalWait,
  type RushInputs,
} from './peak';
export { PRACTICAL_SHARE, practicalRate, practicalRateRecord } from './practicalRate';
export { QUEUE_COUNTS, type QueueCount, queueLength, queueLengthRecord, queueTime } from './queue';
export { rackRate, rackRateRecord } from './rackRate';
export { racksNeeded, racksNeededRecord } from './racksNeeded';
export { racksOfWare, racksOfWareRecord } from './racksOfWare';
export { racksOnTable, racksOnTableRecord, type TableRacksInputs } from './racksOnTable';
export { diningArea, seatsNeeded } from './seats';
export { twoStationRate, twoStationRateRecord } from './twoStations';

/** Formulas of capacity, by the order of the manual. */
export const CAPACITY_FORMULAS: readonly Formula[] = [
  formula(rackRateRecord, rackRate),
  formula(practicalRateRecord, practicalRate),
  formula(conveyorRateRecord, conveyorRate),
  formula(beltRateRecord, beltRate),
  formula(racksNeededRecord, racksNeeded),
  formula(racksOfWareRecord, racksOfWare),
  formula(racksOnTableRecord, racksOnTable),
  formula(dryingRacksRecord, dryingRacks),
  formula(dryingTimeRecord, dryingTime),
  formula(seatsNeededRecord, seatsNeeded),
  formula(diningAreaRecord, diningArea),
  formula(queueLengthRecord, queueLength),
  formula(queueTimeRecord, queueTime),
  formula(lostShareRecord, lostShare),
  formula(waitingShareRecord, waitingShare),
  formula(waitingAtServersRecord, waitingAtServers),
  formula(turnedAwayShareRecord, turnedAwayShare),
  formula(numberAtFullQueueRecord, numberAtFullQueue),
  formula(twoStationRateRecord, twoStationRate),
  ...PEAK_FORMULAS,
];
