import type { Check } from '../checks';
import { check as breakerSize } from './rules/breaker-size';
import { check as drainCarries } from './rules/drain-carries';
import { check as drainNear } from './rules/drain-near';
import { check as drainSlope } from './rules/drain-slope';
import { check as drainUnits } from './rules/drain-units';
import { check as peakKept } from './rules/peak-kept';
import { check as receptorHolds } from './rules/receptor-holds';
import { check as signalsDriveContactors } from './rules/signals-drive-contactors';
import { check as voltageDrop } from './rules/voltage-drop';
import { check as wasteAirGap } from './rules/waste-air-gap';
import { check as wasteDirect } from './rules/waste-direct';
import { check as wireCarries } from './rules/wire-carries';
import { check as workingSpace } from './rules/working-space';

/** Every check that stands on a figure or on the building's services, in the order of the manual. */
export const SERVICE_CHECKS: readonly Check[] = [
  peakKept,
  drainCarries,
  drainSlope,
  drainUnits,
  wasteAirGap,
  wasteDirect,
  drainNear,
  receptorHolds,
  breakerSize,
  wireCarries,
  voltageDrop,
  signalsDriveContactors,
  workingSpace,
];
