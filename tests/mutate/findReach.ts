import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { markReached } from './markReached';
import type { PrivateCopy } from './privateCopy';
import { shareOut } from './shareOut';
import { startWorker, type Worker } from './startWorker';
import type { Mutant, TestFile } from './types';

/** Runs every test file once without a mutant and sees which mutants it reaches, whether it passes and how long it takes. */
export async function findReach(copies: readonly PrivateCopy[], mutants: readonly Mutant[], only: readonly string[]): Promise<TestFile[]> {
  const files = new Set(mutants.map(({ file }) => file));
  for (const copy of copies) for (const file of files) copy.write(file, markFile(copy, file, mutants));
  const workers = await Promise.all(copies.map((copy) => startWorker(copy, 'reach')));
  try {
    const tests = (workers[0]?.tests ?? []).filter((path) => isUnder(path, only));
    return (await shareOut(workers, divide(tests), runPortion)).flat();
  } finally {
    for (const worker of workers) worker.stop();
    for (const copy of copies) for (const file of files) copy.restore(file);
  }
}

const isUnder = (path: string, folders: readonly string[]): boolean =>
  folders.length === 0 || folders.some((folder) => path === folder || path.startsWith(`${folder}/`));

function markFile(copy: PrivateCopy, file: string, mutants: readonly Mutant[]): string {
  const numbered = mutants.map((mutant, number) => ({ mutant, number })).filter(({ mutant }) => mutant.file === file);
  return markReached(readFileSync(join(copy.root, file), 'utf8'), numbered);
}

/** Small enough that the workers end at about the same time. */
const PORTION = 10;
/** No test file takes as long without a mutant. */
const LIMIT_S = 600;

const divide = (tests: readonly string[]): string[][] =>
  Array.from({ length: Math.ceil(tests.length / PORTION) }, (_, nth) => tests.slice(nth * PORTION, (nth + 1) * PORTION));

async function runPortion(worker: Worker, tests: string[]): Promise<TestFile[]> {
  const { reports, isHung } = await worker.run({ changed: null, tests }, [LIMIT_S]);
  if (isHung || reports.length < tests.length) throw new Error(`the tests do not end without a mutant: one of ${tests.join(', ')}`);
  return reports.map(({ path, passed, seconds, reached }) => ({ path, passed, seconds, reached: reached ?? refuse(path) }));
}

/** Taken for “reaches nothing” it would spare mutants that it may kill. */
function refuse(path: string): never {
  throw new Error(`without a mutant no test of ${path} was run to its end`);
}
