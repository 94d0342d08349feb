import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, refuse } from '../../../rules';
import type { Scene } from '../../../scene';
import { hotWaterDemand, hotWaterDemandRecord } from '../formulas/hotWaterDemand';
import { demandInputs, hotWaterFixtures } from './support/fixtures';

export const rule: FigureRule = {
  id: 'hot-water-demand',
  order: 200,
  title: 'Hot water that the room wants',
  group: 'water',
  unit: 'm3/s',
  derive: deriveReadings,
};

/** What was counted. */
export interface HotWaterDemandMessages {
  'hot-water-demand/as-drawn': NoParams;
}

const message = createMessages<HotWaterDemandMessages>();

function deriveReadings(scene: Scene): FigureReading[] {
  const found = hotWaterFixtures(scene);
  if (!found.ok) return [refuse([], found.refusal)];
  if (found.value.length === 0) return [];
  return [
    {
      subjects: [],
      ...compute(hotWaterDemandRecord, hotWaterDemand, demandInputs(found.value)),
      notes: [message('hot-water-demand/as-drawn')],
    },
  ];
}
