import { check as configurationPossible } from './rules/configuration-possible';
import { check as controlsInsideTurn } from './rules/controls-inside-turn';
import { check as controlsReachable } from './rules/controls-reachable';
import { check as doorLiftClear } from './rules/door-lift-clear';
import { check as doorSwingFree } from './rules/door-swing-free';
import { check as fanOnRun } from './rules/fan-on-run';
import { check as fittingsApart } from './rules/fittings-apart';
import { check as hoodHeight } from './rules/hood-height';
import { check as hoodOverhang } from './rules/hood-overhang';
import { check as hoodWhereNeeded } from './rules/hood-where-needed';
import { check as insideRoom } from './rules/inside-room';
import { check as jointFlush } from './rules/joint-flush';
import { check as landingRacks } from './rules/landing-racks';
import { check as lineComplete } from './rules/line-complete';
import { check as nothingOverlaps } from './rules/nothing-overlaps';
import { check as oneWayFlow } from './rules/one-way-flow';
import { check as orderFitsLine } from './rules/order-fits-line';
import { check as orderFitsMachine } from './rules/order-fits-machine';
import { check as passableWidth } from './rules/passable-width';
import { check as powerAgrees } from './rules/power-agrees';
import { check as preRinseSide } from './rules/pre-rinse-side';
import { check as runEquivalentLength } from './rules/run-equivalent-length';
import { check as runReachesOutside } from './rules/run-reaches-outside';
import { check as serviceClearances } from './rules/service-clearances';
import { check as tableFalls } from './rules/table-falls';
import type { Check } from './types';

/** Every check, in the order of the manual: the line and its order, joints and water, flow, then the room and its air. */
export const CHECKS: readonly Check[] = [
  configurationPossible,
  orderFitsLine,
  orderFitsMachine,
  powerAgrees,
  controlsInsideTurn,
  controlsReachable,
  jointFlush,
  tableFalls,
  oneWayFlow,
  lineComplete,
  preRinseSide,
  landingRacks,
  fittingsApart,
  nothingOverlaps,
  insideRoom,
  doorLiftClear,
  serviceClearances,
  doorSwingFree,
  passableWidth,
  hoodWhereNeeded,
  hoodOverhang,
  hoodHeight,
  runEquivalentLength,
  runReachesOutside,
  fanOnRun,
];
