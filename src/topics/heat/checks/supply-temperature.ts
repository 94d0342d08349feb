import {
  boundOf,
  type Check,
  editHookUp,
  isUnder,
  type Measurement,
  machineName,
  machinePlace,
  type Repair,
  sentence,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { SUPPLY_WATER } from '../formulas/temperatures';

export const check: Check = {
  id: 'supply-temperature',
  order: 360,
  title: 'Water that the machine is fed with',
  group: 'heat',
  unit: 'C',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'UFC 4-750-01NF (16 Apr 2004)',
    section: '6-2.3.2: hot supply of 140 °F; the least of each machine stands on its data sheet',
    confidence: 'read',
  },
  why: 'With cooler water the machine waits for its booster. One that wins heat back needs cold water: hot water takes up no heat, and the vapour goes into the room. Water of 140 °F scalds; a licensed plumber connects it.',
  measure: (scene) => scene.machines.flatMap((placed) => [measureFeed(scene, placed), measureTemperature(scene, placed)]),
};

/** Whether it is connected to the water that it is made for. */
function measureFeed(scene: Scene, placed: PlacedMachine): Measurement {
  const { machine, sheet } = placed;
  const { water } = machine.hookUp;
  const name = machineName(scene, placed);
  const about = {
    part: 'feed',
    subjects: [machine.id],
    place: machinePlace(placed),
    unit: 'word',
    relation: 'equals',
  } satisfies Partial<Measurement>;
  if (water === null) {
    const ask = { input: 'water that it is connected to', path: machinePath(placed, 'hookUp', 'water') };
    const say = () => `To know whether ${name} has the right water, say the water that it is connected to.`;
    return { value: null, limit: sheet.waterFeed, ask, say, ...about };
  }
  return {
    value: water,
    limit: sheet.waterFeed,
    say: () => sayFeed(name, water, sheet.waterFeed, coolWords(placed)),
    ...about,
    ...(water === sheet.waterFeed ? {} : { repairs: () => [connectTo(placed)] }),
  };
}

/** What water that is too cool does. */
const coolWords = ({ sheet }: PlacedMachine) =>
  sheet.sanitizing === 'hot-water' ? 'the rinse waits for the booster' : 'wash and sanitiser do not work as they should';

function sayFeed(name: string, water: Feed, made: Feed, tooCool: string): string {
  if (water === made) return `${sentence(name)} is connected to ${water} water, for which it is made.`;
  return made === 'cold'
    ? `${sentence(name)} is made for cold water and is connected to hot: it wins back no heat, and its vapour goes into the room. Connect it to cold water.`
    : `${sentence(name)} is made for hot water and is connected to cold: ${tooCool}. Connect it to hot water.`;
}

type Feed = 'hot' | 'cold';

const connectTo = ({ machine, sheet }: PlacedMachine): Repair => ({
  id: `connect-to-${sheet.waterFeed}`,
  label: () => `Connect it to ${sheet.waterFeed} water`,
  edit: (draft) => editHookUp(draft, machine.id, { water: sheet.waterFeed }),
});

/** The water that it is made for, against the least on its data sheet; a hot rinse has guides beside it. */
function measureTemperature(scene: Scene, placed: PlacedMachine): Measurement {
  const { machine, sheet } = placed;
  const field = sheet.waterFeed === 'hot' ? 'hotWaterC' : 'coldWaterC';
  const value = scene.plan.supply[field];
  const least = sheet.temperatures.supplyC;
  const guide = sheet.waterFeed === 'hot' && sheet.sanitizing === 'hot-water' ? boundOf(SUPPLY_WATER) : null;
  const input = `temperature of the ${sheet.waterFeed} water`;
  const is = `${sentence(sheet.waterFeed)} water comes at`;
  const name = machineName(scene, placed);
  return {
    part: 'temperature',
    subjects: [machine.id],
    place: machinePlace(placed),
    value,
    limit: least,
    source: { kind: 'data-sheet', text: `${sheet.name}: supply water, minimum` },
    ...(guide === null ? {} : { watchLimit: guide }),
    ...(value === null ? { ask: { input, path: ['supply', field] } } : {}),
    say: (f) => {
      if (value === null) return `To know whether it is warm enough for ${name}, say the ${input}.`;
      if (isUnder(value, least))
        return `${is} ${f.temperature(value)} and ${name} needs ${f.temperature(least)} by its data sheet: have the water made hotter, or ${coolWords(placed)}.`;
      if (guide !== null && isUnder(value, guide))
        return `${is} ${f.temperature(value)}, enough for the data sheet of ${name}; design guides ask for ${f.temperature(guide)}, with which the booster has less to do.`;
      return `${is} ${f.temperature(value)}; ${name} needs ${f.temperature(least)}${value >= SCALDS ? ', and at this heat it scalds' : ''}.`;
    },
  };
}

/** 120 °F: hotter water scalds within minutes (common practice). */
const SCALDS = 48.9;
