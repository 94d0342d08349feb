import { compute, createMessages, type FigureReading, type FigureRule, needDemand } from '../../../rules';
import type { Line, Scene } from '../../../scene';
import { twoStationRate, twoStationRateRecord } from '../formulas/twoStations';
import { rateOf } from './support/rush';

export const rule: FigureRule = {
  id: 'rate-with-buffer',
  order: 90,
  title: 'Racks an hour through scrapping and machine',
  group: 'capacity',
  unit: '1/h',
  derive: (scene) => scene.lines.flatMap((line) => deriveLine(scene, line)),
};

/** What is said beside the rate: the slower of the two, in racks an hour. */
export interface RateWithBufferMessages {
  'rate-with-buffer/least': { slowerPerH: number };
}

const say = createMessages<RateWithBufferMessages>();

/** One person who scraps and rinses, the machine, and the places of the soiled landing between them. */
function deriveLine(scene: Scene, { machine: { machine }, stations }: Line): FigureReading[] {
  const subjects = [machine.id];
  const buffer = stations.find(({ kind }) => kind === 'soiled-landing')?.racks ?? null;
  if (buffer === null) return [];
  const demand = needDemand(scene.plan, subjects, 'scrapSeconds');
  if ('ask' in demand) return [demand.ask];
  const rate = rateOf(scene, machine.id);
  if (rate.value === null) return [{ ...rate, subjects }];
  const inputs = { firstPerH: 3600 / demand.known.scrapSeconds, secondPerH: rate.value, buffer };
  const notes = [say('rate-with-buffer/least', { slowerPerH: Math.min(inputs.firstPerH, inputs.secondPerH) })];
  return [{ subjects, ...compute(twoStationRateRecord, twoStationRate, inputs), notes }];
}
