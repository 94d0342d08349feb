import { compute, type FigureReading, type FigureRule, refuse } from '../../../rules';
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

function deriveReadings(scene: Scene): FigureReading[] {
  const found = hotWaterFixtures(scene);
  if (!found.ok) return [refuse([], found.refusal)];
  if (found.value.length === 0) return [];
  return [{ subjects: [], ...compute(hotWaterDemandRecord, hotWaterDemand, demandInputs(found.value)), note: AS_DRAWN }];
}

const AS_DRAWN =
  'Of the fixtures drawn, three meals a day. Each bowl of a three-compartment sink is filled once an hour; where its size is not known, 24 × 24 in for a sink of 72 in or more, else 18 × 18 in.';
