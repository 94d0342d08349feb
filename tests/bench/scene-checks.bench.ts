import { OWN_CHECKS } from '../../src/app/store/ownChecks';
import type { Plan } from '../../src/plan';
import { deriveFigures, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { CHECKS, FIGURES } from '../../src/topics/registry';
import type { Benchmark } from './benchmark.ts';
import { createTypicalRoom } from './typicalRoom.ts';

const base = createTypicalRoom();

/** The same words with no object that was seen before: nothing can be remembered. */
const fresh = (): Plan => structuredClone(base);

/** One thing of the room moved a millimetre, the rest the same objects, as the editor makes it. */
let step = 0;
function nudged<K extends 'machines' | 'things'>(list: K): Plan {
  step += 1;
  const [first, ...rest] = base[list];
  return { ...base, [list]: [{ ...first, x: (first?.x ?? 0) + (step % 5) }, ...rest] };
}

const check = (plan: Plan) => runChecks(deriveScene(plan), OWN_CHECKS);

/** Findings of the line, its room and its services, and every figure. */
const workOut = (plan: Plan) => {
  const scene = deriveScene(plan);
  return [runChecks(scene, CHECKS), deriveFigures(scene, FIGURES)];
};

export const benchmarks: Benchmark[] = [
  {
    name: 'a frame of a drag: scene and checks of the line and room, machine moved',
    unit: 'ms',
    target: 1,
    run: () => check(nudged('machines')),
  },
  { name: 'the same, a thing moved', unit: 'ms', target: 1, run: () => check(nudged('things')) },
  {
    name: 'everything after an edit: all checks and figures, machine moved',
    unit: 'ms',
    target: 10,
    run: () => workOut(nudged('machines')),
  },
  { name: 'the same, a thing moved', unit: 'ms', target: 10, run: () => workOut(nudged('things')) },
  { name: 'everything from scratch, typical room', unit: 'ms', target: 10, run: () => workOut(fresh()) },
];
