import { CHECKS, runChecks } from '../../src/checks';
import { deriveFigures, FIGURES } from '../../src/figures';
import type { Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { ALL_CHECKS } from '../../src/services';
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

const check = (plan: Plan) => runChecks(deriveScene(plan), CHECKS);

/** Findings of the line, its room and its services, and every figure. */
const workOut = (plan: Plan) => {
  const scene = deriveScene(plan);
  return [runChecks(scene, ALL_CHECKS), deriveFigures(scene, FIGURES)];
};

export const benchmarks: Benchmark[] = [
  { name: 'scene and all checks of the line, typical room, from scratch', unit: 'ms', target: 2, run: () => check(fresh()) },
  { name: 'scene and all checks, after moving the machine', unit: 'ms', target: 2, run: () => check(nudged('machines')) },
  { name: 'scene and all checks, after moving a thing', unit: 'ms', target: 2, run: () => check(nudged('things')) },
  { name: 'scene, checks of the line and its services, all figures, from scratch', unit: 'ms', target: 4, run: () => workOut(fresh()) },
  { name: 'the same after moving the machine', unit: 'ms', target: 1.5, run: () => workOut(nudged('machines')) },
  { name: 'the same after moving a thing', unit: 'ms', target: 1.5, run: () => workOut(nudged('things')) },
];
