import type { Plan } from '../../../plan';
import { compute, type FigureReading, type FigureRule, needDemand } from '../../../rules';
import { toSI } from '../../../units';
import { PRACTICAL_SHARE } from '../formulas/practicalRate';
import { racksNeeded, racksNeededRecord } from '../formulas/racksNeeded';

export const rule: FigureRule = {
  id: 'racks-needed-in-peak',
  order: 30,
  title: 'Racks an hour needed in the peak',
  group: 'capacity',
  unit: '1/h',
  derive: ({ plan, machines }) => (machines.length === 0 ? [] : deriveReadings(plan)),
};

/** `ware`: the racks that come back. `rated`: the rated rate of machines that follow them in practice. */
function deriveReadings(plan: Plan): FigureReading[] {
  const demand = needDemand(plan, [], 'peakMeals', 'peakMinutes', 'piecesPerMeal', 'piecesPerRack');
  if ('ask' in demand) return [demand.ask];
  const { peakMeals, peakMinutes, piecesPerMeal: piecesPerGuest, piecesPerRack } = demand.known;
  const guestsPerH = (peakMeals * toSI(1, 'h')) / toSI(peakMinutes, 'min');
  const answer = (practicalShare: number) =>
    compute(racksNeededRecord, racksNeeded, { guestsPerH, piecesPerGuest, piecesPerRack, practicalShare });
  return [
    { part: 'ware', subjects: [], ...answer(1), note: 'The racks themselves, as fast as they come back.' },
    { part: 'rated', subjects: [], ...answer(PRACTICAL_SHARE), note: RATED_NOTE },
  ];
}

const RATED_NOTE = 'The rated rate of all machines together, when 0.70 of it is kept in practice: texts give 0.70 to 0.80, from memory.';
