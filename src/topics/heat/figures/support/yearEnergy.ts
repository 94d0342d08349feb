import {
  askFor,
  compute,
  createMessages,
  type FigureReading,
  type FormulaResult,
  type Message,
  type NoParams,
  needDemand,
  refuse,
} from '../../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../../scene';
import { toSI } from '../../../../units';
import { cycleLength } from '../../../line';
import { askVersion, versionOf } from '../../../power';
import {
  EFFICIENCY_CRITERIA,
  feedOf,
  machineEnergy,
  machineEnergyRecord,
  needFeed,
  needYear,
  waterHeating,
  waterHeatingRecord,
} from '../../../water';
import { BOOSTER_INPUT, waterTemperatureInput } from './heatAsks';
import { HEATER_EFFICIENCY, isFedApart, needBoosterFeed } from './rinseHeat';

/** What is said of the energy of a year. */
export interface YearEnergyMessages {
  'energy-per-year/ask-heater-efficiency': NoParams;
  'energy-per-year/pumps': NoParams;
  /** Idle power: as the data sheet states it; none, as there is no tank; as published criteria allow it. */
  'energy-per-year/idle': { from: 'data-sheet' | 'no-tank' | 'criteria' };
  'energy-per-year/habits': NoParams;
  'energy-per-year/in-building': NoParams;
}

const say = createMessages<YearEnergyMessages>();

/** Electricity of a machine in a year: its heaters, its pumps, and standing ready. */
export function deriveMachineYear(scene: Scene, placed: PlacedMachine): FigureReading {
  const { machine, sheet } = placed;
  const subjects = [machine.id];
  const year = needYear(scene, subjects);
  if ('ask' in year) return year.ask;
  const demand = needDemand(scene.plan, subjects, 'hoursPerDay');
  if ('ask' in demand) return demand.ask;
  const pumps = needPumps(scene, placed);
  if ('ask' in pumps) return pumps.ask;
  const heat = heatOfYear(scene, placed, year);
  if ('ask' in heat) return heat.ask;
  const onS = toSI(demand.known.hoursPerDay, 'h') * year.days;
  const inputs = {
    heatingJ: heat.heatJ,
    washJ: pumps.pumpW * (sheet.cycle.washS + sheet.cycle.rinseS),
    racks: year.racks,
    idleW: sheet.idle ?? (sheet.tank === null ? 0 : idleOf(placed)),
    idleS: Math.max(0, onS - year.racks * cycleLength(sheet)),
  };
  return { subjects, ...compute(machineEnergyRecord, machineEnergy, inputs), notes: notesFor(placed) };
}

/** Energy in a year that the building's heater takes for the water of a machine that is fed hot. */
export function deriveBuildingYear(scene: Scene, placed: PlacedMachine, water: FigureReading): FigureReading {
  const subjects = [placed.machine.id];
  const { supply, tariff } = scene.plan;
  if (water.value === null) return water;
  if (supply.hotWaterC === null) return askFor(subjects, waterTemperatureInput('hot'), ['supply', 'hotWaterC']);
  if (supply.coldWaterC === null) return askFor(subjects, waterTemperatureInput('cold'), ['supply', 'coldWaterC']);
  if (tariff.heaterEfficiency === null)
    return askFor(subjects, say('energy-per-year/ask-heater-efficiency'), ['tariff', 'heaterEfficiency']);
  const riseK = Math.max(0, supply.hotWaterC - supply.coldWaterC);
  const inputs = { waterM3: water.value, riseK, efficiency: tariff.heaterEfficiency, constants: 'sizing' as const };
  return { subjects, ...compute(waterHeatingRecord, waterHeating, inputs), notes: [say('energy-per-year/in-building')] };
}

/** Whether the building heats its water. */
export const isFedHot = (placed: PlacedMachine): boolean => feedOf(placed) === 'hot';

/** What the rated power leaves beside the heaters: pumps, and what little else there is. A booster that stands apart has a power of its own. */
function needPumps(scene: Scene, placed: PlacedMachine): { pumpW: number } | { ask: FigureReading } {
  const { machine, sheet } = placed;
  const version = versionOf(placed);
  if (version === undefined) return { ask: askVersion(placed) };
  const { booster, sanitizing, tank } = sheet;
  const isWithin = !isFedApart(placed);
  if (booster === null && sanitizing === 'hot-water')
    return { ask: askFor([machine.id], BOOSTER_INPUT, dataSheetPath(scene, placed, 'booster')) };
  return { pumpW: Math.max(0, toSI(version.powerKw, 'kW') - (isWithin ? (booster ?? 0) : 0) - (tank?.heater ?? 0)) };
}

/** Heat that the machine itself gives to rinses and to one tank a day. */
function heatOfYear(
  scene: Scene,
  placed: PlacedMachine,
  { racks, days }: { racks: number; days: number },
): { heatJ: number } | { ask: FigureReading } {
  const { machine, sheet } = placed;
  const [fill, rinse] = [needFeed(scene, placed), needBoosterFeed(scene, placed)];
  if ('ask' in fill) return fill;
  if ('ask' in rinse) return rinse;
  const isHot = sheet.sanitizing === 'hot-water';
  const rinses = electricHeat(isHot ? toSI(sheet.rinseWaterL, 'L') * racks : 0, sheet.temperatures.rinseC - rinse.feedC);
  const tanks = electricHeat((sheet.tank?.volume ?? 0) * days, sheet.temperatures.washC - fill.feedC);
  if (!rinses.ok) return { ask: refuse([machine.id], rinses.refusal) };
  return tanks.ok ? { heatJ: rinses.value + tanks.value } : { ask: refuse([machine.id], tanks.refusal) };
}

const electricHeat = (waterM3: number, riseK: number): FormulaResult =>
  waterHeating({ waterM3, riseK: Math.max(0, riseK), efficiency: HEATER_EFFICIENCY, constants: 'sizing' });

/** Door closed, tank heater only: what the first published criteria allow a door machine; the later values are from memory alone. */
function idleOf({ sheet }: PlacedMachine): number {
  const first = EFFICIENCY_CRITERIA.find(
    ({ version, machine, sanitizing }) => version === '1.0' && machine === 'door' && sanitizing === sheet.sanitizing,
  );
  return first?.idleW ?? 0;
}

function notesFor({ sheet }: PlacedMachine): Message[] {
  const from = sheet.idle !== null ? 'data-sheet' : sheet.tank === null ? 'no-tank' : 'criteria';
  return [say('energy-per-year/pumps'), say('energy-per-year/idle', { from }), say('energy-per-year/habits')];
}
