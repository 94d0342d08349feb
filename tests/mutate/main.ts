import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { findMutants } from './findMutants';
import { findReach } from './findReach';
import { judgeMutant } from './judgeMutant';
import { keepTyped } from './keepTyped';
import { type Options, parseOptions } from './options';
import { orderMutants } from './orderMutants';
import { orderTests } from './orderTests';
import { createCopy, type PrivateCopy } from './privateCopy';
import { formatMutant, formatResult, formatScores, formatSurvivors, isBelow } from './report';
import { shareOut } from './shareOut';
import { startWorker } from './startWorker';
import type { Mutant, Result, TestFile } from './types';

/** Exit code: 0 when the mutants were judged, 1 when a folder kills less than `--least`, 2 when it could not run. */
export async function main(args: readonly string[]): Promise<number> {
  const copies: PrivateCopy[] = [];
  const removeAll = () => copies.forEach(({ remove }) => remove());
  process.once('SIGINT', () => {
    removeAll();
    process.exit(2);
  });
  try {
    return await mutate(parseOptions(args), copies);
  } catch (error) {
    process.stderr.write(`${(error as Error).message}\n`);
    return 2;
  } finally {
    removeAll();
  }
}

/** One a core of a small machine. */
const WORKERS = 2;

async function mutate(options: Options, copies: PrivateCopy[]): Promise<number> {
  const top = process.cwd();
  const candidates = collectMutants(top, options);
  for (let nth = 0; nth < (options.list ? 1 : WORKERS); nth++) copies.push(createCopy(top));
  const sample = await takeSample(copies[0] as PrivateCopy, candidates, options.sample);
  print(`${sample.length} mutants of ${candidates.length} that could be made`);
  if (options.list) {
    for (const mutant of sample) print(formatMutant(mutant));
    return 0;
  }
  const results = await judgeAll(copies, sample, options);
  print(`\n${formatScores(results)}\n\n${formatSurvivors(results)}`);
  return isBelow(results, options.least) ? 1 : 0;
}

function collectMutants(top: string, { paths, seed }: Options): Mutant[] {
  const texts = new Map(paths.flatMap((path) => listSources(top, path)).map((file) => [file, readFileSync(join(top, file), 'utf8')]));
  const mutants = [...texts].flatMap(([file, text]) => findMutants(text, file));
  if (mutants.length === 0) throw new Error(`nothing to mutate in ${paths.join(', ')}`);
  return orderMutants(mutants, (file) => texts.get(file) ?? '', seed);
}

function listSources(top: string, path: string): string[] {
  const place = join(top, path);
  if (!existsSync(place)) throw new Error(`there is no ${path}`);
  if (statSync(place).isFile()) return [path];
  const names = readdirSync(place, { recursive: true, encoding: 'utf8' }).sort();
  return names.filter((name) => /(?<!\.d)\.tsx?$/.test(name)).map((name) => `${path}/${name.replaceAll('\\', '/')}`);
}

/** The first so many that type-check. */
async function takeSample(copy: PrivateCopy, candidates: readonly Mutant[], size: number): Promise<Mutant[]> {
  const sample: Mutant[] = [];
  let next = 0;
  while (sample.length < size && next < candidates.length) {
    const tried = candidates.slice(next, next + size - sample.length);
    next += tried.length;
    const typed = await keepTyped(copy, tried);
    sample.push(...tried.filter((mutant) => typed.has(mutant)));
  }
  return sample;
}

async function judgeAll(copies: readonly PrivateCopy[], sample: readonly Mutant[], options: Options): Promise<Result[]> {
  const tests = keepPassing(await findReach(copies, sample, options.tests));
  const workers = await Promise.all(copies.map((copy) => startWorker(copy, 'judge')));
  try {
    return await shareOut(workers, [...sample.entries()], async (worker, [number, mutant]) => {
      const result = await judgeMutant(worker, mutant, orderTests(mutant, number, tests), options.patience);
      print(formatResult(result));
      return result;
    });
  } finally {
    for (const worker of workers) worker.stop();
  }
}

/** A test that fails by itself would kill every mutant; one with a limit of its own fails when the machine is busy. */
function keepPassing(tests: readonly TestFile[]): TestFile[] {
  const failing = tests.filter(({ passed, reached }) => !passed && reached.length > 0);
  if (failing.length > 0) print(`Left out, for they fail without a mutant: ${failing.map(({ path }) => path).join(', ')}`);
  const passing = tests.filter(({ passed }) => passed);
  if (passing.length === 0) throw new Error('no test passes without a mutant');
  return passing;
}

const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};
