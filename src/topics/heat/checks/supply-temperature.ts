import type { DataSheet } from '../../../catalog';
import {
  boundOf,
  type Check,
  createMessages,
  editHookUp,
  isUnder,
  type Measurement,
  type Message,
  machinePlace,
  type Name,
  type NoParams,
  nameMachine,
  type Repair,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { waterTemperatureInput } from '../figures/support/heatAsks';
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

/** What is said of the water. °C. */
export interface SupplyTemperatureMessages {
  'supply-temperature/ask-feed': NoParams;
  'supply-temperature/feed-unknown': { machine: Name };
  'supply-temperature/right-feed': { machine: Name; feed: Feed };
  'supply-temperature/made-for-cold': { machine: Name };
  'supply-temperature/made-for-hot': { machine: Name; sanitizing: Sanitizing };
  'supply-temperature/repair-connect-to': { feed: Feed };
  'supply-temperature/unknown': { machine: Name; ask: Message };
  'supply-temperature/cool': Compared & { sanitizing: Sanitizing };
  'supply-temperature/under-guide': { machine: Name; feed: Feed; comesC: number; guideC: number };
  'supply-temperature/warm': Compared & { scalds: boolean };
}

interface Compared {
  machine: Name;
  feed: Feed;
  comesC: number;
  neededC: number;
}

type Feed = DataSheet['waterFeed'];
type Sanitizing = DataSheet['sanitizing'];

const say = createMessages<SupplyTemperatureMessages>();

/** Whether it is connected to the water that it is made for. */
function measureFeed(scene: Scene, placed: PlacedMachine): Measurement {
  const { machine, sheet } = placed;
  const { water } = machine.hookUp;
  const name = nameMachine(scene, placed);
  const about = {
    part: 'feed',
    subjects: [machine.id],
    place: machinePlace(placed),
    unit: 'word',
    relation: 'equals',
  } satisfies Partial<Measurement>;
  if (water === null) {
    const ask = { input: say('supply-temperature/ask-feed'), path: machinePath(placed, 'hookUp', 'water') };
    const message = say('supply-temperature/feed-unknown', { machine: name });
    return { value: null, limit: sheet.waterFeed, ask, message, ...about };
  }
  return {
    value: water,
    limit: sheet.waterFeed,
    message: describeFeed(placed, name, water),
    ...about,
    ...(water === sheet.waterFeed ? {} : { repairs: { ids: [repairId(placed)], find: () => [connectTo(placed)] } }),
  };
}

function describeFeed({ sheet }: PlacedMachine, machine: Name, water: Feed): Message {
  if (water === sheet.waterFeed) return say('supply-temperature/right-feed', { machine, feed: water });
  return sheet.waterFeed === 'cold'
    ? say('supply-temperature/made-for-cold', { machine })
    : say('supply-temperature/made-for-hot', { machine, sanitizing: sheet.sanitizing });
}

const repairId = ({ sheet }: PlacedMachine) => `connect-to-${sheet.waterFeed}`;

const connectTo = (placed: PlacedMachine): Repair => ({
  id: repairId(placed),
  label: say('supply-temperature/repair-connect-to', { feed: placed.sheet.waterFeed }),
  edit: (draft) => editHookUp(draft, placed.machine.id, { water: placed.sheet.waterFeed }),
});

/** The water that it is made for, against the least on its data sheet; a hot rinse has guides beside it. */
function measureTemperature(scene: Scene, placed: PlacedMachine): Measurement {
  const { machine, sheet } = placed;
  const field = sheet.waterFeed === 'hot' ? 'hotWaterC' : 'coldWaterC';
  const value = scene.plan.supply[field];
  const least = sheet.temperatures.supplyC;
  const guide = sheet.waterFeed === 'hot' && sheet.sanitizing === 'hot-water' ? boundOf(SUPPLY_WATER) : null;
  const input = waterTemperatureInput(sheet.waterFeed);
  const name = nameMachine(scene, placed);
  return {
    part: 'temperature',
    subjects: [machine.id],
    place: machinePlace(placed),
    value,
    limit: least,
    source: { kind: 'data-sheet', text: `${sheet.name}: supply water, minimum` },
    ...(guide === null ? {} : { watchLimit: guide }),
    ...(value === null ? { ask: { input, path: ['supply', field] } } : {}),
    message:
      value === null ? say('supply-temperature/unknown', { machine: name, ask: input }) : describeTemperature(placed, name, value, guide),
  };
}

function describeTemperature({ sheet }: PlacedMachine, machine: Name, comesC: number, guideC: number | null): Message {
  const { waterFeed: feed, sanitizing } = sheet;
  const compared = { machine, feed, comesC, neededC: sheet.temperatures.supplyC };
  if (isUnder(comesC, compared.neededC)) return say('supply-temperature/cool', { ...compared, sanitizing });
  if (guideC !== null && isUnder(comesC, guideC)) return say('supply-temperature/under-guide', { machine, feed, comesC, guideC });
  return say('supply-temperature/warm', { ...compared, scalds: comesC >= SCALDS });
}

/** 120 °F: hotter water scalds within minutes (common practice). */
const SCALDS = 48.9;
