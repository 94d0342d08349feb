import { readFileSync } from 'node:fs';
import { drawDimensions, drawPlan, type PlanOptions } from '../../src/drawing';
import { edit, type Plan, parsePlan } from '../../src/plan';
import { deriveScene, type Scene } from '../../src/scene';
import type { Benchmark } from './benchmark.ts';

const OPTIONS: PlanOptions = { units: 'us', scaleDenominator: 50 };

function readExample(name: string): Plan {
  const result = parsePlan(readFileSync(`public/examples/${name}.rackway.json`, 'utf8'));
  if (!result.ok) throw new Error(result.problem.reason);
  return result.plan;
}

/** The scenes of a drag, one a frame: the cart a little farther each time, everything else the same objects. */
function createDrag(plan: Plan, frames: number): Scene[] {
  let now = plan;
  return Array.from({ length: frames }, () => {
    now = edit(now, 'drag', (draft) => {
      const cart = draft.things.find(({ kind }) => kind === 'cart');
      if (cart !== undefined) cart.x += 0.25;
    }).plan;
    return deriveScene(now);
  });
}

const scenes = createDrag(readExample('school-corner'), 400);
let frame = 0;
const next = (): Scene => {
  frame = (frame + 1) % scenes.length;
  return scenes[frame] as Scene;
};

export const benchmarks: Benchmark[] = [
  { name: 'plan of a typical room, one thing dragged', unit: 'ms', target: 2, run: () => drawPlan(next(), OPTIONS) },
  { name: 'its dimensions, laid anew', unit: 'ms', target: 8, run: () => drawDimensions(next(), OPTIONS) },
];
