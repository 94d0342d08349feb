import { rule as airChanges } from './rules/air-changes';
import { rule as boosterPowerNeeded } from './rules/booster-power-needed';
import { rule as branchFixtureUnits } from './rules/branch-fixture-units';
import { rule as breakerSize } from './rules/breaker-size';
import { rule as deckHeight } from './rules/deck-height';
import { rule as drainCapacity } from './rules/drain-capacity';
import { rule as drainDistance } from './rules/drain-distance';
import { rule as drainSpeed } from './rules/drain-speed';
import { rule as drainUnits } from './rules/drain-units';
import { rule as dryingTime } from './rules/drying-time';
import { rule as ductDewPoint } from './rules/duct-dew-point';
import { rule as ductInsulationNeeded } from './rules/duct-insulation-needed';
import { rule as ductWallTemperature } from './rules/duct-wall-temperature';
import { rule as dumpStorage } from './rules/dump-storage';
import { rule as energyPerYear } from './rules/energy-per-year';
import { rule as exhaustShare } from './rules/exhaust-share';
import { rule as fanAirflow } from './rules/fan-airflow';
import { rule as fanPressure } from './rules/fan-pressure';
import { rule as firstHeatUp } from './rules/first-heat-up';
import { rule as greaseInterceptor } from './rules/grease-interceptor';
import { rule as handSinkDistance } from './rules/hand-sink-distance';
import { rule as heatUnits } from './rules/heat-units';
import { rule as heaterNeeded } from './rules/heater-needed';
import { rule as hoodExhaust } from './rules/hood-exhaust';
import { rule as hoodNetExhaust } from './rules/hood-net-exhaust';
import { rule as hotWaterDemand } from './rules/hot-water-demand';
import { rule as liftingIndex } from './rules/lifting-index';
import { rule as liftingLimit } from './rules/lifting-limit';
import { rule as loadCurrent } from './rules/load-current';
import { rule as machineHeatGain } from './rules/machine-heat-gain';
import { rule as makeUpAir } from './rules/make-up-air';
import { rule as makeUpDifference } from './rules/make-up-difference';
import { rule as peakBacklog } from './rules/peak-backlog';
import { rule as peakWait } from './rules/peak-wait';
import { rule as practicalRacksPerHour } from './rules/practical-racks-per-hour';
import { rule as pressureAtMachine } from './rules/pressure-at-machine';
import { rule as racksNeededInPeak } from './rules/racks-needed-in-peak';
import { rule as racksOnLanding } from './rules/racks-on-landing';
import { rule as racksPerHour } from './rules/racks-per-hour';
import { rule as racksThatCanWait } from './rules/racks-that-can-wait';
import { rule as racksWaitingByChance } from './rules/racks-waiting-by-chance';
import { rule as rateWithBuffer } from './rules/rate-with-buffer';
import { rule as reachOverTable } from './rules/reach-over-table';
import { rule as realCycle } from './rules/real-cycle';
import { rule as realRacksPerHour } from './rules/real-racks-per-hour';
import { rule as recoveredHeat } from './rules/recovered-heat';
import { rule as rinseEnergyPerRack } from './rules/rinse-energy-per-rack';
import { rule as rinseFlowPressure } from './rules/rinse-flow-pressure';
import { rule as rinseHeatUp } from './rules/rinse-heat-up';
import { rule as rinseHold } from './rules/rinse-hold';
import { rule as rinseWaterPerDay } from './rules/rinse-water-per-day';
import { rule as rinseWaterPerHour } from './rules/rinse-water-per-hour';
import { rule as rinseWaterPerMeal } from './rules/rinse-water-per-meal';
import { rule as rinseWaterPerRack } from './rules/rinse-water-per-rack';
import { rule as roomAirflowNeeded } from './rules/room-airflow-needed';
import { rule as roomHumidityRising } from './rules/room-humidity-rising';
import { rule as roomHumiditySteady } from './rules/room-humidity-steady';
import { rule as roomTemperatureSteady } from './rules/room-temperature-steady';
import { rule as roomVapour } from './rules/room-vapour';
import { rule as runEquivalentLength } from './rules/run-equivalent-length';
import { rule as runFriction } from './rules/run-friction';
import { rule as runLoss } from './rules/run-loss';
import { rule as runSpeed } from './rules/run-speed';
import { rule as runningCost } from './rules/running-cost';
import { rule as sanitizingHeater } from './rules/sanitizing-heater';
import { rule as scalePerYear } from './rules/scale-per-year';
import { rule as sharedPlaces } from './rules/shared-places';
import { rule as sinkVolume } from './rules/sink-volume';
import { rule as sprayWaterPerDay } from './rules/spray-water-per-day';
import { rule as sprayWaterPerYear } from './rules/spray-water-per-year';
import { rule as stationWayWidth } from './rules/station-way-width';
import { rule as supplyAirGap } from './rules/supply-air-gap';
import { rule as surfaceMargin } from './rules/surface-margin';
import { rule as tankHeatUp } from './rules/tank-heat-up';
import { rule as totalExhaust } from './rules/total-exhaust';
import { rule as transferAir } from './rules/transfer-air';
import { rule as turningSpace } from './rules/turning-space';
import { rule as voltageDrop } from './rules/voltage-drop';
import { rule as waivedHoodExhaust } from './rules/waived-hood-exhaust';
import { rule as wasteAirGap } from './rules/waste-air-gap';
import { rule as waterHardness } from './rules/water-hardness';
import { rule as waterLineLength } from './rules/water-line-length';
import { rule as waterLineLoss } from './rules/water-line-loss';
import { rule as waterPerDay } from './rules/water-per-day';
import { rule as waterPerYear } from './rules/water-per-year';
import { rule as waterSpeed } from './rules/water-speed';
import { rule as wayLength } from './rules/way-length';
import { rule as wayWidth } from './rules/way-width';
import { rule as wireNeeded } from './rules/wire-needed';
import { rule as workArea } from './rules/work-area';
import { rule as workingDepth } from './rules/working-depth';
import { rule as workingReach } from './rules/working-reach';
import type { FigureRule } from './types';

/** Every figure, in the order in which they are shown. */
export const FIGURES: readonly FigureRule[] = [
  racksPerHour,
  practicalRacksPerHour,
  racksNeededInPeak,
  racksOnLanding,
  peakBacklog,
  peakWait,
  racksThatCanWait,
  racksWaitingByChance,
  rateWithBuffer,
  dryingTime,
  rinseWaterPerRack,
  rinseWaterPerHour,
  rinseWaterPerMeal,
  rinseWaterPerDay,
  waterPerDay,
  waterPerYear,
  sprayWaterPerDay,
  sprayWaterPerYear,
  sinkVolume,
  hotWaterDemand,
  rinseFlowPressure,
  waterLineLength,
  waterSpeed,
  waterLineLoss,
  pressureAtMachine,
  supplyAirGap,
  waterHardness,
  scalePerYear,
  heaterNeeded,
  sanitizingHeater,
  rinseEnergyPerRack,
  recoveredHeat,
  boosterPowerNeeded,
  rinseHeatUp,
  rinseHold,
  realCycle,
  realRacksPerHour,
  tankHeatUp,
  firstHeatUp,
  heatUnits,
  energyPerYear,
  runningCost,
  hoodExhaust,
  hoodNetExhaust,
  makeUpAir,
  waivedHoodExhaust,
  totalExhaust,
  transferAir,
  exhaustShare,
  makeUpDifference,
  airChanges,
  runEquivalentLength,
  runSpeed,
  runFriction,
  runLoss,
  fanAirflow,
  fanPressure,
  ductDewPoint,
  ductWallTemperature,
  ductInsulationNeeded,
  machineHeatGain,
  roomVapour,
  roomHumiditySteady,
  roomHumidityRising,
  roomAirflowNeeded,
  roomTemperatureSteady,
  surfaceMargin,
  loadCurrent,
  breakerSize,
  wireNeeded,
  voltageDrop,
  workingDepth,
  drainDistance,
  wasteAirGap,
  drainCapacity,
  drainSpeed,
  drainUnits,
  branchFixtureUnits,
  dumpStorage,
  greaseInterceptor,
  wayWidth,
  stationWayWidth,
  workArea,
  turningSpace,
  reachOverTable,
  workingReach,
  deckHeight,
  handSinkDistance,
  wayLength,
  sharedPlaces,
  liftingLimit,
  liftingIndex,
];
