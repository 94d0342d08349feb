import { type FigureReading, needDemand, refuse } from '../../../../rules';
import type { Scene } from '../../../../scene';
import { racksOfWare } from '../../../line';

/** Racks of a year, and the days on which they are washed; or the reading that asks for what is missing, or refuses. */
export function needYear(scene: Scene, subjects: string[]): { racks: number; days: number } | { ask: FigureReading } {
  const demand = needDemand(scene.plan, subjects, 'mealsPerDay', 'piecesPerMeal', 'piecesPerRack', 'daysPerYear');
  if ('ask' in demand) return demand;
  const { mealsPerDay, piecesPerMeal, piecesPerRack, daysPerYear: days } = demand.known;
  const racks = racksOfWare({ meals: mealsPerDay, piecesPerMeal, piecesPerRack });
  return racks.ok ? { racks: racks.value * days, days } : { ask: refuse(subjects, racks.refusal) };
}
