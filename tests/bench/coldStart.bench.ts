import { spawnSync } from 'node:child_process';
import type { Benchmark } from './benchmark.ts';

/** `check` of one plan in a process of its own, after the bundle has been made; npm's own start is not in it. */
const startOnce = (): number => {
  const begun = performance.now();
  spawnSync(process.execPath, ['src/cli/launch.mjs', 'check', 'public/examples/cafe-straight.rackway.json'], { stdio: 'ignore' });
  return performance.now() - begun;
};

export const benchmarks: Benchmark[] = [
  {
    name: 'check of one plan, cold start (npm’s own start, about 0.3 s, is not in it)',
    unit: 'ms',
    target: 400,
    sample: async () => Array.from({ length: 10 }, startOnce).slice(1),
  },
];
