import { CHECKS, runChecks } from '../../src/checks';
import type { Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
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

export const benchmarks: Benchmark[] = [
  { name: 'scene and all checks, typical room, from scratch', unit: 'ms', target: 2, run: () => check(fresh()) },
  { name: 'scene and all checks, after moving the machine', unit: 'ms', target: 2, run: () => check(nudged('machines')) },
  { name: 'scene and all checks, after moving a thing', unit: 'ms', target: 2, run: () => check(nudged('things')) },
];
