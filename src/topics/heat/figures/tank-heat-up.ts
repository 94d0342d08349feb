import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { needFeed } from '../../water';
import { heatUpTime, heatUpTimeRecord } from '../formulas/heatUpTime';
import { HEATER_EFFICIENCY } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'tank-heat-up',
  order: 380,
  title: 'Time to heat the wash tank',
  group: 'heat',
  unit: 's',
  derive: (scene) => scene.machines.flatMap((placed) => deriveMachine(scene, placed)),
};

/** What is said of how it was found. */
export interface TankHeatUpMessages {
  'tank-heat-up/own-heater': NoParams;
}

const say = createMessages<TankHeatUpMessages>();

/** A machine that washes with fresh water has no tank. */
function deriveMachine(scene: Scene, placed: PlacedMachine): FigureReading[] {
  const { tank, temperatures } = placed.sheet;
  if (tank === null) return [];
  const feed = needFeed(scene, placed);
  if ('ask' in feed) return [feed.ask];
  const inputs = {
    waterM3: tank.volume,
    fromC: feed.feedC,
    toC: temperatures.washC,
    powerW: tank.heater,
    efficiency: HEATER_EFFICIENCY,
  };
  return [{ subjects: [placed.machine.id], ...compute(heatUpTimeRecord, heatUpTime, inputs), notes: [say('tank-heat-up/own-heater')] }];
}
