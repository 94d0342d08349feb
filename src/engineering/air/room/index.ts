import { type Formula, formula } from '../../formula';
import { exhaustShare, exhaustShareRecord, totalExhaust, totalExhaustRecord, transferAir, transferAirRecord } from './airBalance';
import { airChanges, airChangesRecord, airflowOfChanges, airflowOfChangesRecord } from './airChanges';
import { buildUp, buildUpRecord, purgeTime, purgeTimeRecord } from './buildUp';
import { risingHumidity, risingHumidityRecord } from './risingHumidity';
import {
  humidityAirflow,
  humidityAirflowRecord,
  steadyHumidity,
  steadyHumidityRecord,
  steadyTemperature,
  steadyTemperatureRecord,
} from './steadyRoom';
import { surfaceMargin, surfaceMarginRecord } from './surfaceMargin';

export { exhaustShare, exhaustShareRecord, totalExhaust, totalExhaustRecord, transferAir, transferAirRecord } from './airBalance';
export { airChanges, airChangesRecord, airflowOfChanges } from './airChanges';
export { buildUp, purgeTime } from './buildUp';
export { risingHumidity, risingHumidityRecord } from './risingHumidity';
export { type RoomAirInputs, solveRoomAir } from './roomAir';
export {
  humidityAirflow,
  humidityAirflowRecord,
  steadyHumidity,
  steadyHumidityRecord,
  steadyTemperature,
  steadyTemperatureRecord,
} from './steadyRoom';
export { surfaceMargin, surfaceMarginRecord } from './surfaceMargin';

/** What heat and vapour make of a room. */
export const ROOM_FORMULAS: readonly Formula[] = [
  formula(totalExhaustRecord, totalExhaust),
  formula(transferAirRecord, transferAir),
  formula(exhaustShareRecord, exhaustShare),
  formula(steadyHumidityRecord, steadyHumidity),
  formula(steadyTemperatureRecord, steadyTemperature),
  formula(humidityAirflowRecord, humidityAirflow),
  formula(risingHumidityRecord, risingHumidity),
  formula(buildUpRecord, buildUp),
  formula(purgeTimeRecord, purgeTime),
  formula(airChangesRecord, airChanges),
  formula(airflowOfChangesRecord, airflowOfChanges),
  formula(surfaceMarginRecord, surfaceMargin),
];
