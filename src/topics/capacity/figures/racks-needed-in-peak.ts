import type { Plan } from '../../../plan';
import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, needDemand } from '../../../rules';
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

/** What is said beside the racks. */
export interface RacksNeededInPeakMessages {
  'racks-needed-in-peak/ware': NoParams;
  'racks-needed-in-peak/rated': NoParams;
}

const say = createMessages<RacksNeededInPeakMessages>();

/** `ware`: the racks that come back. `rated`: the rated rate of machines that follow them in practice. */
function deriveReadings(plan: Plan): FigureReading[] {
  const demand = needDemand(plan, [], 'peakMeals', 'peakMinutes', 'piecesPerMeal', 'piecesPerRack');
  if ('ask' in demand) return [demand.ask];
  const { peakMeals, peakMinutes, piecesPerMeal: piecesPerGuest, piecesPerRack } = demand.known;
  const guestsPerH = (peakMeals * toSI(1, 'h')) / toSI(peakMinutes, 'min');
  const answer = (practicalShare: number) =>
    compute(racksNeededRecord, racksNeeded, { guestsPerH, piecesPerGuest, piecesPerRack, practicalShare });
  return [
    { part: 'ware', subjects: [], ...answer(1), notes: [say('racks-needed-in-peak/ware')] },
    { part: 'rated', subjects: [], ...answer(PRACTICAL_SHARE), notes: [say('racks-needed-in-peak/rated')] },
  ];
}
