import type { Check } from '../checks';
import { check as accessibleApproach } from './rules/accessible-approach';
import { check as backlogFits } from './rules/backlog-fits';
import { check as backsplash } from './rules/backsplash';
import { check as boosterEnough } from './rules/booster-enough';
import { check as boosterNear } from './rules/booster-near';
import { check as breakerSize } from './rules/breaker-size';
import { check as ceiling } from './rules/ceiling';
import { check as chemicalsDosed } from './rules/chemicals-dosed';
import { check as cleanOffFloor } from './rules/clean-off-floor';
import { check as cleanableBelow } from './rules/cleanable-below';
import { check as doorApproach } from './rules/door-approach';
import { check as doorPassable } from './rules/door-passable';
import { check as drainCarries } from './rules/drain-carries';
import { check as drainNear } from './rules/drain-near';
import { check as drainSize } from './rules/drain-size';
import { check as drainSlope } from './rules/drain-slope';
import { check as drainUnits } from './rules/drain-units';
import { check as dryingPlaces } from './rules/drying-places';
import { check as ductMaterial } from './rules/duct-material';
import { check as ductWallDry } from './rules/duct-wall-dry';
import { check as fanReachesAirflow } from './rules/fan-reaches-airflow';
import { check as floorDrains } from './rules/floor-drains';
import { check as gapsCleanable } from './rules/gaps-cleanable';
import { check as handSinkNear } from './rules/hand-sink-near';
import { check as handSinkWater } from './rules/hand-sink-water';
import { check as headroom } from './rules/headroom';
import { check as heatUnits } from './rules/heat-units';
import { check as heaterEnough } from './rules/heater-enough';
import { check as hoodExhaustEnough } from './rules/hood-exhaust-enough';
import { check as idleCriteria } from './rules/idle-criteria';
import { check as lightEnough } from './rules/light-enough';
import { check as makeUpBalances } from './rules/make-up-balances';
import { check as makeUpTempered } from './rules/make-up-tempered';
import { check as manualSanitizing } from './rules/manual-sanitizing';
import { check as outletDistances } from './rules/outlet-distances';
import { check as peakKept } from './rules/peak-kept';
import { check as preRinseSize } from './rules/pre-rinse-size';
import { check as pressureAtMachine } from './rules/pressure-at-machine';
import { check as rackFitsTable } from './rules/rack-fits-table';
import { check as rackLift } from './rules/rack-lift';
import { check as reachOverTable } from './rules/reach-over-table';
import { check as receptorHolds } from './rules/receptor-holds';
import { check as rim } from './rules/rim';
import { check as rinsePressure } from './rules/rinse-pressure';
import { check as rinseTemperature } from './rules/rinse-temperature';
import { check as roomHumidity } from './rules/room-humidity';
import { check as runDrains } from './rules/run-drains';
import { check as runSpeed } from './rules/run-speed';
import { check as scupper } from './rules/scupper';
import { check as signalsDriveContactors } from './rules/signals-drive-contactors';
import { check as sinkWaste } from './rules/sink-waste';
import { check as staticPressure } from './rules/static-pressure';
import { check as supplyBackflow } from './rules/supply-backflow';
import { check as supplyTemperature } from './rules/supply-temperature';
import { check as thermometers } from './rules/thermometers';
import { check as threeCompartments } from './rules/three-compartments';
import { check as voltageDrop } from './rules/voltage-drop';
import { check as waivedExhaustEnough } from './rules/waived-exhaust-enough';
import { check as wallsDry } from './rules/walls-dry';
import { check as washTemperature } from './rules/wash-temperature';
import { check as wasteAirGap } from './rules/waste-air-gap';
import { check as wasteBins } from './rules/waste-bins';
import { check as wasteDirect } from './rules/waste-direct';
import { check as waterHardness } from './rules/water-hardness';
import { check as waterPerRackCriteria } from './rules/water-per-rack-criteria';
import { check as waysToStations } from './rules/ways-to-stations';
import { check as wireCarries } from './rules/wire-carries';
import { check as workingHeight } from './rules/working-height';
import { check as workingSpace } from './rules/working-space';

/** Every check that stands on a figure or on the building's services, in the order of the manual. */
export const SERVICE_CHECKS: readonly Check[] = [
  peakKept,
  backlogFits,
  rinsePressure,
  pressureAtMachine,
  staticPressure,
  supplyBackflow,
  waterHardness,
  waterPerRackCriteria,
  washTemperature,
  rinseTemperature,
  supplyTemperature,
  thermometers,
  boosterEnough,
  boosterNear,
  heaterEnough,
  idleCriteria,
  heatUnits,
  handSinkWater,
  hoodExhaustEnough,
  waivedExhaustEnough,
  makeUpBalances,
  makeUpTempered,
  roomHumidity,
  wallsDry,
  runSpeed,
  fanReachesAirflow,
  runDrains,
  outletDistances,
  ductMaterial,
  ductWallDry,
  drainCarries,
  drainSize,
  drainSlope,
  drainUnits,
  wasteAirGap,
  wasteDirect,
  drainNear,
  sinkWaste,
  receptorHolds,
  breakerSize,
  wireCarries,
  voltageDrop,
  signalsDriveContactors,
  workingSpace,
  waysToStations,
  headroom,
  doorPassable,
  doorApproach,
  accessibleApproach,
  reachOverTable,
  workingHeight,
  rackLift,
  lightEnough,
  dryingPlaces,
  rackFitsTable,
  backsplash,
  rim,
  scupper,
  threeCompartments,
  manualSanitizing,
  chemicalsDosed,
  preRinseSize,
  handSinkNear,
  cleanableBelow,
  gapsCleanable,
  cleanOffFloor,
  floorDrains,
  ceiling,
  wasteBins,
];
