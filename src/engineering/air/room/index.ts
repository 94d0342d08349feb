import { type Formula, formula } from '../../formula';
import { exhaustShare, exhaustShareRecord, totalExhaust, totalExhaustRecord, transferAir, transferAirRecord } from './airBalance';
import { airChanges, airChangesRecord } from './airChanges';
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
export { airChanges, airChangesRecord } from './airChanges';
export { risingHumidity, risingHumidityRecord } from './risingHumidity';
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
  formula(airChangesRecord, airChanges),
  formula(surfaceMarginRecord, surfaceMargin),
];
