import { type Check, connectionPlace, holdAgainst, type Measurement, machineName, sentence, wordsOfAsk } from '../../../rules';
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

/** The pipe that carries the waste on; over an air gap also the machine's own waste pipe, which runs to it. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const machine = machineName(scene, placed);
  const pipe = carryingPipe(scene, placed);
  if (!isPipe(pipe)) {
    const about = { subjects: [placed.machine.id], place: connectionPlace(placed, 'drain'), value: null, limit: null };
    return [{ ask: pipe, say: () => `To hold the fall of its drain against the least, say the ${wordsOfAsk(pipe.input)}.`, ...about }];
  }
  if (pipe.drain === null) return [measureLaid(placed, pipe, `the drain of ${machine}`)];
  return [
    measureLaid(placed, pipe, `the pipe of the floor drain that takes the waste of ${machine}`),
    { part: 'waste-pipe', ...measureLaid(placed, wastePipe(placed), `the waste pipe of ${machine}`) },
  ];
}

type Laid = Pick<CarryingPipe, 'subjects' | 'bore' | 'slope'>;

function wastePipe(placed: PlacedMachine): Laid {
  const { drainBore, drainSlope } = placed.machine.hookUp;
  return {
    subjects: [placed.machine.id],
    bore: { value: drainBore, input: 'inside diameter of the waste pipe', path: machinePath(placed, 'hookUp', 'drainBore') },
    slope: { value: drainSlope, input: 'fall of the waste pipe', path: machinePath(placed, 'hookUp', 'drainSlope') },
  };
}

/** The least fall goes by the nominal size of the pipe; a bore between two sizes takes the steeper. */
function measureLaid(placed: PlacedMachine, { subjects, bore, slope }: Laid, name: string): Measurement {
  return holdAgainst(
    slope,
    { subjects, ...leastFor(bore) },
    {
      place: connectionPlace(placed, 'drain'),
      name: 'the least fall of the drain',
      say: (falls, least, f) => {
        const needs = sentence(`${name} falls ${f.slope(falls)}; a pipe of ${f.length(bore.value ?? 0)} needs ${f.slope(least)}.`);
        return falls < least - ROUNDING ? `${needs} Lay it steeper, or have a plumber take a larger one.` : needs;
      },
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
