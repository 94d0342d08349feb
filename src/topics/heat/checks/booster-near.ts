import {
  type Ask,
  type Check,
  createMessages,
  isOver,
  isUnder,
  lengthOf,
  type Measurement,
  machinePlace,
  type Name,
  type NoParams,
  nameMachine,
  type Source,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { BOOSTER_CLEAR, BOOSTER_DISTANCE } from '../formulas/boosterPower';

const MOST = lengthOf(BOOSTER_DISTANCE);
const CLEAR = lengthOf(BOOSTER_CLEAR);

export const check: Check = {
  id: 'booster-near',
  order: 390,
  title: 'A booster of its own stands near the machine, off floor and wall',
  group: 'heat',
  unit: 'mm',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Gas Technology Institute, water heating equipment',
    section: 'as near to the machine as possible, usually within 5 ft',
    confidence: 'read',
  },
  why: 'Between two racks the water in the pipe cools, and the next rinse begins with it. Under a drainboard a booster needs room below and behind it, for a hand that cleans and for its service. The machine’s plate and the booster’s own manual come first.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** What is said of a booster that stands apart. Lengths in mm. */
export interface BoosterNearMessages {
  'booster-near/ask-place': NoParams;
  'booster-near/place-unknown': Of;
  'booster-near/ask-way': NoParams;
  'booster-near/way-unknown': Of;
  'booster-near/near': Of & { way: number; most: number };
  'booster-near/far': Of & { way: number; most: number };
  'booster-near/ask-floor': NoParams;
  'booster-near/floor-unknown': Of;
  'booster-near/off-floor': Of & { free: number; least: number };
  'booster-near/low': Of & { free: number; missing: number };
  'booster-near/ask-wall': NoParams;
  'booster-near/wall-unknown': Of;
  'booster-near/off-wall': Of;
  'booster-near/at-wall': Of;
}

/** The machine that the booster feeds. */
interface Of {
  machine: Name;
}

const say = createMessages<BoosterNearMessages>();

/** A booster in the machine is as near as can be. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { boosterPlace } = placed.machine.hookUp;
  if (placed.sheet.booster === null || placed.sheet.booster === 0 || boosterPlace === 'inside') return [];
  return boosterPlace === null
    ? [askPlace(scene, placed)]
    : [measureWay, measureFloor, measureWall].map((measure) => measure(scene, placed));
}

const about = (placed: PlacedMachine) => ({ subjects: [placed.machine.id], place: machinePlace(placed), severity: 'watch' as const });

type Field = 'boosterPlace' | 'boosterWay' | 'boosterBelow' | 'boosterOffWall';

const askFor = (placed: PlacedMachine, input: Ask['input'], field: Field): Pick<Measurement, 'ask'> => ({
  ask: { input, path: machinePath(placed, 'hookUp', field) },
});

const askPlace = (scene: Scene, placed: PlacedMachine): Measurement => ({
  part: 'way',
  ...about(placed),
  value: null,
  limit: MOST,
  ...askFor(placed, say('booster-near/ask-place'), 'boosterPlace'),
  message: say('booster-near/place-unknown', { machine: nameMachine(scene, placed) }),
});

function measureWay(scene: Scene, placed: PlacedMachine): Measurement {
  const { boosterWay } = placed.machine.hookUp;
  return {
    part: 'way',
    ...about(placed),
    value: boosterWay,
    limit: MOST,
    ...(boosterWay === null ? askFor(placed, say('booster-near/ask-way'), 'boosterWay') : {}),
    message: describeWay(nameMachine(scene, placed), boosterWay),
  };
}

function describeWay(machine: Name, way: number | null) {
  if (way === null) return say('booster-near/way-unknown', { machine });
  return say(isOver(way, MOST) ? 'booster-near/far' : 'booster-near/near', { machine, way, most: MOST });
}

/** Weak: restated alone. */
const RESTATED: Source = {
  kind: 'published',
  document: 'A guide to plan review whose origin is not named',
  section: 'a booster below the drainboard: 6 in above the floor, and off the wall',
  confidence: 'secondary',
};

function measureFloor(scene: Scene, placed: PlacedMachine): Measurement {
  const { boosterBelow } = placed.machine.hookUp;
  return {
    part: 'floor',
    ...about(placed),
    value: boosterBelow,
    limit: CLEAR,
    relation: 'at-least',
    source: RESTATED,
    ...(boosterBelow === null ? askFor(placed, say('booster-near/ask-floor'), 'boosterBelow') : {}),
    message: describeFloor(nameMachine(scene, placed), boosterBelow),
  };
}

function describeFloor(machine: Name, free: number | null) {
  if (free === null) return say('booster-near/floor-unknown', { machine });
  if (isUnder(free, CLEAR)) return say('booster-near/low', { machine, free, missing: CLEAR - free });
  return say('booster-near/off-floor', { machine, free, least: CLEAR });
}

function measureWall(scene: Scene, placed: PlacedMachine): Measurement {
  const { boosterOffWall } = placed.machine.hookUp;
  return {
    part: 'wall',
    ...about(placed),
    value: boosterOffWall,
    limit: true,
    unit: 'yes-no',
    relation: 'equals',
    source: RESTATED,
    ...(boosterOffWall === null ? askFor(placed, say('booster-near/ask-wall'), 'boosterOffWall') : {}),
    message: describeWall(nameMachine(scene, placed), boosterOffWall),
  };
}

function describeWall(machine: Name, isOff: boolean | null) {
  if (isOff === null) return say('booster-near/wall-unknown', { machine });
  return say(isOff ? 'booster-near/off-wall' : 'booster-near/at-wall', { machine });
}
