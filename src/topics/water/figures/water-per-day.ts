import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, needDemand, notesOf, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { racksOfWare } from '../../line';
import { rackWater, rackWaterRecord } from '../formulas/rackWater';
import { allWare, rinseOf } from './support/rinseWater';

export const rule: FigureRule = {
  id: 'water-per-day',
  order: 150,
  title: 'Rinse and fill water in a day, at least',
  group: 'water',
  unit: 'm3',
  derive: (scene) => scene.machines.flatMap((placed) => deriveMachine(scene, placed)),
};

/** What was assumed of the tank. */
export interface WaterPerDayMessages {
  'water-per-day/filled-once': NoParams;
}

const message = createMessages<WaterPerDayMessages>();

/** A rinse for each rack, and its tank filled once. A machine without a tank takes its rinse water alone, which has its own figure. */
function deriveMachine(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const { tank } = placed.sheet;
  if (tank === null) return [];
  const subjects = [placed.machine.id];
  const demand = needDemand(scene.plan, subjects, 'mealsPerDay', 'piecesPerMeal', 'piecesPerRack');
  if ('ask' in demand) return [demand.ask];
  const { mealsPerDay: meals, piecesPerMeal, piecesPerRack } = demand.known;
  const racks = racksOfWare({ meals, piecesPerMeal, piecesPerRack });
  if (!racks.ok) return [refuse(subjects, racks.refusal)];
  const { perRackM3 } = rinseOf(placed, racks.value);
  const inputs = { perRackM3, racks: racks.value, fillM3: tank.volume, fills: 1 };
  return [{ subjects, ...compute(rackWaterRecord, rackWater, inputs), ...notesOf(message('water-per-day/filled-once'), allWare(scene)) }];
}
