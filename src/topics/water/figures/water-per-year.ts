import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, notesOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { rackWater, rackWaterRecord } from '../formulas/rackWater';
import { allWare } from './support/rinseWater';
import { needYear } from './support/yearWater';

export const rule: FigureRule = {
  id: 'water-per-year',
  order: 160,
  title: 'Water of the machine in a year',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** What was assumed of the tank. */
export interface WaterPerYearMessages {
  'water-per-year/one-fill-a-day': NoParams;
}

const message = createMessages<WaterPerYearMessages>();

/**
 * A rinse for each rack, and its tank filled once on each day: the food code has a machine in use cleaned at least every 24 hours
 * (4-501.14, from memory).
 */
function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const year = needYear(scene, subjects);
  if ('ask' in year) return year.ask;
  const { rinseWaterL, tank } = placed.sheet;
  const inputs = { perRackM3: toSI(rinseWaterL, 'L'), racks: year.racks, fillM3: tank?.volume ?? 0, fills: tank === null ? 0 : year.days };
  const notes = notesOf(tank === null ? null : message('water-per-year/one-fill-a-day'), allWare(scene));
  return { subjects, ...compute(rackWaterRecord, rackWater, inputs), ...notes };
}
