import { compute, type FigureReading, type FigureRule, needDemand, noteOf, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { racksOfWare } from '../../line';
import { rackWater, rackWaterRecord } from '../formulas/rackWater';
import { ALL_WARE, NO_FILLS, rinseOf } from './support/rinseWater';

export const rule: FigureRule = {
  id: 'rinse-water-per-meal',
  order: 130,
  title: 'Rinse water of a meal',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

function deriveReading({ plan, machines }: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const demand = needDemand(plan, subjects, 'piecesPerMeal', 'piecesPerRack');
  if ('ask' in demand) return demand.ask;
  const racks = racksOfWare({ meals: 1, ...demand.known });
  if (!racks.ok) return refuse(subjects, racks.refusal);
  const note = noteOf(NO_FILLS, machines.length > 1 ? ALL_WARE : null);
  return { subjects, ...compute(rackWaterRecord, rackWater, rinseOf(placed, racks.value)), ...note };
}
