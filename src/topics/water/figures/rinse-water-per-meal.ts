import { compute, type FigureReading, type FigureRule, needDemand, notesOf, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { racksOfWare } from '../../line';
import { rackWater, rackWaterRecord } from '../formulas/rackWater';
import { allWare, NO_FILLS, rinseOf } from './support/rinseWater';

export const rule: FigureRule = {
  id: 'rinse-water-per-meal',
  order: 130,
  title: 'Rinse water of a meal',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const demand = needDemand(scene.plan, subjects, 'piecesPerMeal', 'piecesPerRack');
  if ('ask' in demand) return demand.ask;
  const racks = racksOfWare({ meals: 1, ...demand.known });
  if (!racks.ok) return refuse(subjects, racks.refusal);
  return { subjects, ...compute(rackWaterRecord, rackWater, rinseOf(placed, racks.value)), ...notesOf(NO_FILLS, allWare(scene)) };
}
