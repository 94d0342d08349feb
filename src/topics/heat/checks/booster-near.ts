import { type Check, isOver, isUnder, lengthOf, type Measurement, machineName, machinePlace, type Source } from '../../../rules';
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

/** A booster in the machine is as near as can be. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { boosterPlace } = placed.machine.hookUp;
  if (placed.sheet.booster === null || placed.sheet.booster === 0 || boosterPlace === 'inside') return [];
  return boosterPlace === null
    ? [askPlace(scene, placed)]
    : [measureWay, measureFloor, measureWall].map((measure) => measure(scene, placed));
}

const about = (placed: PlacedMachine) => ({ subjects: [placed.machine.id], place: machinePlace(placed), severity: 'watch' as const });
const nameOf = (scene: Scene, placed: PlacedMachine) => `the booster of ${machineName(scene, placed)}`;

type Key = 'boosterPlace' | 'boosterWay' | 'boosterBelow' | 'boosterOffWall';
const askFor = (placed: PlacedMachine, input: string, key: Key) => ({ ask: { input, path: machinePath(placed, 'hookUp', key) } });

const askPlace = (scene: Scene, placed: PlacedMachine): Measurement => ({
  part: 'way',
  ...about(placed),
  value: null,
  limit: MOST,
  ...askFor(placed, 'place of the booster', 'boosterPlace'),
  say: () => `Say whether ${nameOf(scene, placed)} is in it or stands apart.`,
});

function measureWay(scene: Scene, placed: PlacedMachine): Measurement {
  const { boosterWay } = placed.machine.hookUp;
  const name = nameOf(scene, placed);
  return {
    part: 'way',
    ...about(placed),
    value: boosterWay,
    limit: MOST,
    ...(boosterWay === null ? askFor(placed, 'way of the pipe from the booster', 'boosterWay') : {}),
    say: (f) => {
      if (boosterWay === null) return `Say how long the pipe is from ${name}.`;
      const is = `The pipe from ${name} is ${f.length(boosterWay)} long`;
      return isOver(boosterWay, MOST)
        ? `${is}; usually it is ${f.length(MOST)} at most. Set the booster nearer: what cools in the pipe goes into the rinse.`
        : `${is}; ${f.length(MOST)} is usual at most.`;
    },
  };
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
  const name = nameOf(scene, placed);
  return {
    part: 'floor',
    ...about(placed),
    value: boosterBelow,
    limit: CLEAR,
    relation: 'at-least',
    source: RESTATED,
    ...(boosterBelow === null ? askFor(placed, 'free height under the booster', 'boosterBelow') : {}),
    say: (f) => {
      if (boosterBelow === null) return `Say how much is free under ${name}.`;
      const has = `Under ${name} ${f.length(boosterBelow)} is free`;
      return isUnder(boosterBelow, CLEAR)
        ? `${has}, ${f.length(CLEAR - boosterBelow)} less than is wanted to clean there. Hang it higher, or give it legs.`
        : `${has}; ${f.length(CLEAR)} is wanted to clean there.`;
    },
  };
}

function measureWall(scene: Scene, placed: PlacedMachine): Measurement {
  const { boosterOffWall } = placed.machine.hookUp;
  const name = nameOf(scene, placed);
  return {
    part: 'wall',
    ...about(placed),
    value: boosterOffWall,
    limit: true,
    unit: 'yes-no',
    relation: 'equals',
    source: RESTATED,
    ...(boosterOffWall === null ? askFor(placed, 'booster: held off the wall or not', 'boosterOffWall') : {}),
    say: () => {
      if (boosterOffWall === null) return `Say whether ${name} is held off the wall.`;
      return boosterOffWall
        ? `A hand comes behind ${name}: it is held off the wall.`
        : `No hand comes behind ${name}: hold it off the wall.`;
    },
  };
}
