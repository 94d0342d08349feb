import {
  boundOf,
  type Check,
  connectionPlace,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  pointPlace,
  readingsFor,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { rule as drainDistanceFigure } from '../figures/drain-distance';
import { nearestDrain, outletOf } from '../figures/support/drains';
import { rule as wasteAirGapFigure } from '../figures/waste-air-gap';
import { INDIRECT_WASTE_LENGTH, judgeUntrappedWaste, UNTRAPPED_WASTE_LENGTH, UNTRAPPED_WASTE_LEVEL } from '../formulas/indirectWaste';
import { fallOver, leastSlope } from '../formulas/leastSlope';
import { nominalSize } from '../formulas/nominalSize';
import { measureReach } from './support/receptorReach';

export const check: Check = {
  id: 'drain-near',
  order: 620,
  title: 'A floor drain takes the waste: near, lower, and in reach',
  group: 'drain',
  unit: 'm',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'Chicago Plumbing Code',
    section:
      'indirect waste: at most 15 ft in all, a trap of its own above 30 in on the level or 54 in in all, no receptor in an inaccessible space',
    confidence: 'read',
  },
  why: 'Waste runs by its own weight. A long pipe clogs and smells, and a strainer that nobody can reach is never emptied. Each turn needs a cleanout. Local code may ask for more.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** What is said of the waste pipe of a machine. Lengths in mm. */
export interface DrainNearMessages {
  'drain-near/what-way': NoParams;
  'drain-near/way': { machine: Name; way: number; most: number };
  'drain-near/way-too-long': { machine: Name; way: number; most: number };
  'drain-near/ask-trap': NoParams;
  'drain-near/trap-not-needed': Untrapped;
  'drain-near/trap-not-said': Untrapped;
  'drain-near/trap': Untrapped;
  'drain-near/trap-missing': Untrapped;
  'drain-near/what-fall': NoParams;
  'drain-near/ends-right': Ending;
  'drain-near/ends-too-low': Ending;
}

/** What may run without a trap of its own. */
interface Untrapped {
  machine: Name;
  mostLevel: number;
  mostWhole: number;
}

/** Height of the end of the pipe above the floor, below 0 under it; the air gap that is needed, 0 where none is. */
interface Ending {
  machine: Name;
  height: number;
  airGap: number;
}

const message = createMessages<DrainNearMessages>();

/** The way only where there is an air gap: how far a direct connection may go is for a check of its own. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const outlet = outletOf(placed);
  const [reading] = readingsFor(drainDistanceFigure, scene, placed);
  if (outlet === undefined || reading === undefined) return [];
  const nearest = nearestDrain(scene.room, outlet);
  if (nearest === null) return [measureWay(scene, placed, reading)];
  const { waste } = placed.machine.hookUp;
  return [
    ...(waste === 'indirect' ? [measureWay(scene, placed, reading), ...measureTrap(scene, placed, reading)] : []),
    ...(waste === null ? [] : measureFall(scene, placed, reading)),
    measureReach(scene, { id: placed.machine.id, name: nameMachine(scene, placed) }, nearest.placed),
  ];
}

/** The whole length: on the level, and the drop to where the air gap begins. */
function measureWay(scene: Scene, placed: PlacedMachine, reading: FigureReading): Measurement {
  const most = boundOf(INDIRECT_WASTE_LENGTH);
  const whole =
    reading.value === null
      ? reading
      : {
          ...reading,
          value: reading.value + dropOf(placed),
        };
  return holdReading(whole, {
    part: 'way',
    place: connectionPlace(placed, 'drain'),
    what: message('drain-near/what-way'),
    limit: most,
    message: (way) =>
      message(way > most + ROUNDING ? 'drain-near/way-too-long' : 'drain-near/way', {
        machine: nameMachine(scene, placed),
        way: way * 1000,
        most: most * 1000,
      }),
  });
}

/** From the outlet down to the end of the pipe, in metres; while the air gap is not known, to the floor. */
const dropOf = (placed: PlacedMachine) => Math.max(0, (outletOf(placed)?.z ?? 0) - (placed.machine.hookUp.airGap ?? 0)) / 1000;

/** Above so much on the level, or in all, the pipe has a trap of its own, which must be said. */
function measureTrap(scene: Scene, placed: PlacedMachine, { subjects, value: level }: FigureReading): Measurement[] {
  if (level === null) return [];
  const { wasteTrapped } = placed.machine.hookUp;
  const needed = !judgeUntrappedWaste(level, level + dropOf(placed)).pass;
  const isOpen = needed && wasteTrapped === null;
  return [
    {
      part: 'trap',
      subjects,
      place: connectionPlace(placed, 'drain'),
      unit: 'yes-no',
      relation: 'equals',
      value: isOpen ? null : !needed || wasteTrapped === true,
      limit: true,
      ...(isOpen ? { ask: { input: message('drain-near/ask-trap'), path: machinePath(placed, 'hookUp', 'wasteTrapped') } } : {}),
      message: message(needed ? TRAP_KEYS[`${wasteTrapped}`] : 'drain-near/trap-not-needed', {
        machine: nameMachine(scene, placed),
        mostLevel: boundOf(UNTRAPPED_WASTE_LEVEL) * 1000,
        mostWhole: boundOf(UNTRAPPED_WASTE_LENGTH) * 1000,
      }),
    },
  ];
}

/** By whether a pipe that needs a trap has one. */
const TRAP_KEYS = { null: 'drain-near/trap-not-said', true: 'drain-near/trap', false: 'drain-near/trap-missing' } as const;

const ROUNDING = 1e-9;

/** Height that is left for the air gap after the waste pipe has fallen as it must; a direct connection only has to run down. */
function measureFall(scene: Scene, placed: PlacedMachine, way: FigureReading): Measurement[] {
  const drain = placed.connections.find(({ connection }) => connection.kind === 'drain');
  if (drain === undefined || drain.connection.size === 0 || way.value === null) return [];
  const left = heightLeft(drain.point.z / 1000, drain.connection.size / 1000, way.value);
  const [gap] = placed.machine.hookUp.waste === 'direct' ? [] : readingsFor(wasteAirGapFigure, scene, placed);
  const limit = gap === undefined ? 0 : gap.value;
  const reading: FigureReading = {
    subjects: way.subjects,
    value: left.ok ? left.value : null,
    how: null,
    ...(left.ok ? {} : { refusal: left.refusal }),
  };
  return [
    holdReading(limit === null ? { ...reading, ...gap, subjects: way.subjects, value: null } : reading, {
      part: 'fall',
      place: pointPlace(drain.point),
      what: message('drain-near/what-fall'),
      limit,
      relation: 'at-least',
      source: {
        kind: 'geometry',
        text: 'Height of the drain connection above the floor, less the fall of the pipe by Chicago Table 18-29-704.1, against the air gap.',
      },
      message: (height) =>
        message(height < (limit ?? 0) - ROUNDING ? 'drain-near/ends-too-low' : 'drain-near/ends-right', {
          machine: nameMachine(scene, placed),
          height: height * 1000,
          airGap: (limit ?? 0) * 1000,
        }),
    }),
  ];
}

function heightLeft(outletM: number, pipeM: number, wayM: number) {
  const size = nominalSize({ boreM: pipeM });
  const slope = size.ok ? leastSlope({ sizeM: size.value }) : size;
  const fall = slope.ok ? fallOver({ lengthM: wayM, slope: slope.value }) : slope;
  return fall.ok ? { ok: true as const, value: outletM - fall.value } : fall;
}
