import { racksOfWare, rackWater, rackWaterRecord } from '../../engineering';
import type { PlacedMachine, Scene } from '../../scene';
import { toSI } from '../../units';
import { compute } from '../compute';
import type { FigureReading } from '../types';
import { needDemand } from './demand';
import { noteOf, refuse } from './readings';
import { ALL_WARE } from './rinseWater';

/** Racks of a year, and the days on which they are washed; or the reading that asks for what is missing, or refuses. */
export function needYear(scene: Scene, subjects: string[]): { racks: number; days: number } | { ask: FigureReading } {
  const demand = needDemand(scene.plan, subjects, 'mealsPerDay', 'piecesPerMeal', 'piecesPerRack', 'daysPerYear');
  if ('ask' in demand) return demand;
  const { mealsPerDay, piecesPerMeal, piecesPerRack, daysPerYear: days } = demand.known;
  const racks = racksOfWare({ meals: mealsPerDay, piecesPerMeal, piecesPerRack });
  return racks.ok ? { racks: racks.value * days, days } : { ask: refuse(subjects, racks.reason) };
}

/** Water of a machine in a year: a rinse for each rack, and its tank filled once on each day. */
export function deriveYearWater(scene: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const year = needYear(scene, subjects);
  if ('ask' in year) return year.ask;
  const { rinseWaterL, tank } = placed.sheet;
  const inputs = { perRackM3: toSI(rinseWaterL, 'L'), racks: year.racks, fillM3: tank?.volume ?? 0, fills: tank === null ? 0 : year.days };
  const note = noteOf(tank === null ? null : ONE_FILL, scene.machines.length > 1 ? ALL_WARE : null);
  return { subjects, ...compute(rackWaterRecord, rackWater, inputs), ...note };
}

/** The food code has a machine in use cleaned at least every 24 hours (4-501.14, from memory). */
const ONE_FILL =
  'The tank is counted as filled once a day, the least that cleaning it asks for (food code, from memory); more fillings take more.';
