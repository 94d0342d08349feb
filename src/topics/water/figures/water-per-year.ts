import { compute, type FigureReading, type FigureRule, noteOf } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { rackWater, rackWaterRecord } from '../formulas/rackWater';
import { ALL_WARE } from './support/rinseWater';
import { needYear } from './support/yearWater';

export const rule: FigureRule = {
  id: 'water-per-year',
  order: 160,
  title: 'Water of the machine in a year',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** A rinse for each rack, and its tank filled once on each day. */
function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
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
