import {
  type Check,
  connectionPlace,
  createMessages,
  holdAgainst,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameMachine,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { type CarryingPipe, carryingPipe, isPipe } from '../figures/support/drains';
import { leastSlope } from '../formulas/leastSlope';
import { nominalSize } from '../formulas/nominalSize';

export const check: Check = {
  id: 'drain-slope',
  order: 580,
  title: 'The drain falls enough for its size',
  group: 'drain',
  unit: 'ratio',
  relation: 'at-least',
  source: { kind: 'published', document: 'Chicago Plumbing Code', section: 'Table 18-29-704.1', confidence: 'read' },
  why: 'In a drain that falls too little, food and grease settle until it is stopped up and the hot waste comes back out of the floor.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** What is said of the fall; the bore of the pipe in mm. */
export interface DrainSlopeMessages {
  'drain-slope/not-known': { ask: Message };
  'drain-slope/ask-waste-bore': NoParams;
  'drain-slope/ask-waste-slope': NoParams;
  'drain-slope/what': NoParams;
  'drain-slope/enough': Fall;
  'drain-slope/too-little': Fall;
}

interface Fall extends Whose {
  falls: number;
  bore: number;
  least: number;
}

interface Whose {
  machine: Name;
  pipe: 'drain' | 'floor-drain-pipe' | 'waste-pipe';
}

const message = createMessages<DrainSlopeMessages>();

/** The pipe that carries the waste on; over an air gap also the machine's own waste pipe, which runs to it. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const machine = nameMachine(scene, placed);
  const pipe = carryingPipe(scene, placed);
  if (!isPipe(pipe)) {
    const about = { subjects: [placed.machine.id], place: connectionPlace(placed, 'drain'), value: null, limit: null };
    return [{ ask: pipe, message: message('drain-slope/not-known', { ask: pipe.input }), ...about }];
  }
  if (pipe.drain === null) return [measureLaid(placed, pipe, { machine, pipe: 'drain' })];
  return [
    measureLaid(placed, pipe, { machine, pipe: 'floor-drain-pipe' }),
    { part: 'waste-pipe', ...measureLaid(placed, wastePipe(placed), { machine, pipe: 'waste-pipe' }) },
  ];
}

type Laid = Pick<CarryingPipe, 'subjects' | 'bore' | 'slope'>;

function wastePipe(placed: PlacedMachine): Laid {
  const { drainBore, drainSlope } = placed.machine.hookUp;
  return {
    subjects: [placed.machine.id],
    bore: { value: drainBore, input: message('drain-slope/ask-waste-bore'), path: machinePath(placed, 'hookUp', 'drainBore') },
    slope: { value: drainSlope, input: message('drain-slope/ask-waste-slope'), path: machinePath(placed, 'hookUp', 'drainSlope') },
  };
}

/** The least fall goes by the nominal size of the pipe; a bore between two sizes takes the steeper. */
function measureLaid(placed: PlacedMachine, { subjects, bore, slope }: Laid, whose: Whose): Measurement {
  return holdAgainst(
    slope,
    { subjects, ...leastFor(bore) },
    {
      place: connectionPlace(placed, 'drain'),
      what: message('drain-slope/what'),
      message: (falls, least) =>
        message(falls < least - ROUNDING ? 'drain-slope/too-little' : 'drain-slope/enough', {
          ...whose,
          falls,
          bore: bore.value ?? 0,
          least,
        }),
    },
  );
}

const ROUNDING = 1e-9;

function leastFor(bore: Laid['bore']) {
  if (bore.value === null) return { value: null, ask: { input: bore.input, path: bore.path } };
  const size = nominalSize({ boreM: bore.value / 1000 });
  const least = size.ok ? leastSlope({ sizeM: size.value }) : size;
  return least.ok ? { value: least.value } : { value: null, refusal: least.refusal };
}
