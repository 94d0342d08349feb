import { createRefusal, type FigureReading, needDemand, readFigure, refuse } from '../../../../rules';
import type { Scene } from '../../../../scene';
import { toSI } from '../../../../units';
import type { RushInputs } from '../../formulas/peak';
import { PRACTICAL_SHARE } from '../../formulas/practicalRate';
import { rule as racksNeededInPeak } from '../racks-needed-in-peak';
import { rule as racksPerHour } from '../racks-per-hour';
import { rule as realRacksPerHour } from '../real-racks-per-hour';

/** The machines at the rate that their cycles give, and at what practice keeps of it. */
export const PACES = [
  { part: 'rated', share: 1 },
  { part: 'practice', share: PRACTICAL_SHARE },
] as const;

/** The peak as a stream of racks against the rate of all machines; or the reading that asks for what is missing, or refuses. */
export function needRush(scene: Scene): { rush: RushInputs } | { ask: FigureReading } {
  const needed = readFigure(racksNeededInPeak, scene)[0];
  if (needed?.value == null) return { ask: withoutPart(needed) };
  const demand = needDemand(scene.plan, [], 'peakMinutes');
  if ('ask' in demand) return demand;
  const rate = rateOfMachines(scene);
  if (rate.value === null) return { ask: rate };
  return { rush: { peakPerH: needed.value, peakS: toSI(demand.known.peakMinutes, 'min'), servedPerH: rate.value } };
}

/** Racks an hour that a machine washes: with the wait for its booster where it has one to wait for. */
export function rateOf(scene: Scene, machine: string): FigureReading {
  const of = (readings: readonly FigureReading[]) => readings.find(({ subjects }) => subjects[0] === machine);
  return (
    of(readFigure(realRacksPerHour, scene)) ??
    of(readFigure(racksPerHour, scene)) ??
    refuse([], createRefusal(racksPerHour, 'machine-not-found', {}))
  );
}

/** The rate of all machines together, or the reading of the first that is not known. */
export function rateOfMachines(scene: Scene): FigureReading {
  const rates = scene.machines.map(({ machine }) => rateOf(scene, machine.id));
  const unknown = rates.find(({ value }) => value === null);
  return unknown ?? { subjects: [], value: rates.reduce((sum, { value }) => sum + (value ?? 0), 0), how: null };
}

/** Racks an hour after the peak: the other meals of the day over the other hours that the machine is on. */
export function needAfter({ plan }: Scene): { afterPerH: number } | { ask: FigureReading } {
  const demand = needDemand(plan, [], 'mealsPerDay', 'hoursPerDay', 'peakMeals', 'peakMinutes', 'piecesPerMeal', 'piecesPerRack');
  if ('ask' in demand) return demand;
  const { mealsPerDay, hoursPerDay, peakMeals, peakMinutes, piecesPerMeal, piecesPerRack } = demand.known;
  const restH = hoursPerDay - peakMinutes / 60;
  if (restH <= 0) return { ask: refuse([], createRefusal(racksNeededInPeak, 'peak-fills-day', {})) };
  return { afterPerH: (Math.max(0, mealsPerDay - peakMeals) * piecesPerMeal) / piecesPerRack / restH };
}

const withoutPart = (
  { part: _part, ...reading }: FigureReading = refuse([], createRefusal(racksNeededInPeak, 'no-machine', {})),
): FigureReading => reading;
