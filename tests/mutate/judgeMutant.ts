import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { applyMutant } from './applyMutant';
import type { Worker } from './startWorker';
import type { Mutant, Outcome, Result, TestFile } from './types';
import type { Run } from './watchRun';

/** Runs the tests over one mutant until one of them fails. */
export async function judgeMutant(worker: Worker, mutant: Mutant, tests: readonly TestFile[], patience: number): Promise<Result> {
  if (tests.length === 0) return { mutant, outcome: 'unreached', killer: null, seconds: 0 };
  const start = performance.now();
  const run = await runOver(worker, mutant, tests, patience);
  const killer = run.isHung ? tests[run.reports.length] : run.reports.find(({ passed }) => !passed);
  return { mutant, outcome: outcomeOf(run, tests.length), killer: killer?.path ?? null, seconds: (performance.now() - start) / 1000 };
}

async function runOver({ copy, run }: Worker, mutant: Mutant, tests: readonly TestFile[], patience: number): Promise<Run> {
  const { file } = mutant;
  const paths = tests.map(({ path }) => path);
  const limits = tests.map(({ seconds }) => patience + 3 * seconds);
  copy.write(file, applyMutant(readFileSync(join(copy.root, file), 'utf8'), mutant));
  try {
    return await run({ changed: file, tests: paths }, limits);
  } finally {
    copy.restore(file);
  }
}

function outcomeOf({ reports, hasStrayErrors, isHung }: Run, count: number): Outcome {
  if (isHung || reports.some(({ isSlow }) => isSlow)) return 'timeout';
  if (hasStrayErrors || reports.some(({ passed }) => !passed)) return 'killed';
  if (reports.length < count) throw new Error('some tests were not run, and none of them failed');
  return 'survived';
}
