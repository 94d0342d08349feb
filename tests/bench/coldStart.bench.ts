import { spawnSync } from 'node:child_process';
import type { Benchmark } from './benchmark.ts';

/** A start of the command line in a process of its own, after the bundle has been made; npm's own start is not in it. */
const startOnce = (): number => {
  const begun = performance.now();
  spawnSync(process.execPath, ['src/cli/launch.mjs'], { stdio: 'ignore' });
  return performance.now() - begun;
};

export const benchmarks: Benchmark[] = [
  {
    name: 'command line, cold start',
    unit: 'ms',
    target: 400,
    sample: async () => Array.from({ length: 10 }, startOnce).slice(1),
  },
];
