import { hotWaterDemand, hotWaterDemandRecord, STORAGE_SHARES } from '../../engineering';
import type { Scene } from '../../scene';
import { compute } from '../compute';
import { hotWaterFixtures } from '../support/fixtures';
import { refuse } from '../support/readings';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'hot-water-demand',
  title: 'Hot water that the room wants',
  group: 'water',
  unit: 'm3/s',
  derive: deriveReadings,
};

function deriveReadings(scene: Scene): FigureReading[] {
  const found = hotWaterFixtures(scene);
  if (!found.ok) return [refuse([], found.reason)];
  const fixtures = found.value;
  if (fixtures.length === 0) return [];
  const inputs = {
    units: fixtures.map(({ units }) => units),
    eachM3S: fixtures.map(({ eachM3S }) => eachM3S),
    share: STORAGE_SHARES.heavy,
  };
  return [{ subjects: [], ...compute(hotWaterDemandRecord, hotWaterDemand, inputs), note: AS_DRAWN }];
}

const AS_DRAWN =
  'Of the fixtures drawn, three meals a day. A three-compartment sink of 72 in or more counts with compartments of 24 in, else of 18 in.';
