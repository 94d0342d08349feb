import { compute, createMessages, type FigureReading, type FigureRule, type NoParams, notesOf, refuse } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { toSI } from '../../../units';
import { ratedRate } from '../../line';
import { rackWater, rinseOf } from '../../water';
import { boosterPower, boosterPowerRecord } from '../formulas/boosterPower';
import { hotRinseMachines, needBoosterFeed, recoveryNote } from './support/rinseHeat';

export const rule: FigureRule = {
  id: 'booster-power-needed',
  order: 330,
  title: 'Power that the booster needs',
  group: 'heat',
  unit: 'W',
  derive: (scene) => hotRinseMachines(scene).map((placed) => deriveReading(scene, placed)),
};

/** What is said of how it was found. */
export interface BoosterPowerNeededMessages {
  'booster-power-needed/steady': NoParams;
}

const say = createMessages<BoosterPowerNeededMessages>();

function deriveReading(scene: Scene, placed: PlacedMachine): FigureReading {
  const subjects = [placed.machine.id];
  const feed = needBoosterFeed(scene, placed);
  if ('ask' in feed) return feed.ask;
  const rated = ratedRate(placed);
  if (!rated.ok) return refuse(subjects, rated.refusal);
  const inAnHour = rackWater(rinseOf(placed, rated.value));
  if (!inAnHour.ok) return refuse(subjects, inAnHour.refusal);
  const inputs = {
    rinseM3S: toSI(inAnHour.value, 'm3/h'),
    supplyC: feed.feedC,
    rinseC: placed.sheet.temperatures.rinseC,
    rule: 'electric-98' as const,
  };
  return {
    subjects,
    ...compute(boosterPowerRecord, boosterPower, inputs),
    ...notesOf(say('booster-power-needed/steady'), recoveryNote(placed)),
  };
}
