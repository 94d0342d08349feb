import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { applyMutant } from './applyMutant';
import type { PrivateCopy } from './privateCopy';
import type { Mutant } from './types';

/**
 * Those of the mutants that type-check. Many are tried at once, one a file: a mutant is dropped when its file has an error.
 * Where only other files have one, the round is halved until it is known whose it is.
 */
export async function keepTyped(copy: PrivateCopy, mutants: readonly Mutant[]): Promise<Set<Mutant>> {
  const typed = new Set<Mutant>();
  if ((await runCompiler(copy)) !== '') throw new Error('the sources have errors of type without a mutant');
  for (const round of divideByFile(mutants)) {
    for (const mutant of await keepRound(copy, round)) typed.add(mutant);
  }
  return typed;
}

/** Rounds in which no file comes twice. */
function divideByFile(mutants: readonly Mutant[]): Mutant[][] {
  const rounds: Mutant[][] = [];
  const met = new Map<string, number>();
  for (const mutant of mutants) {
    const nth = met.get(mutant.file) ?? 0;
    met.set(mutant.file, nth + 1);
    const round = rounds[nth] ?? [];
    round.push(mutant);
    rounds[nth] = round;
  }
  return rounds;
}

async function keepRound(copy: PrivateCopy, round: readonly Mutant[]): Promise<readonly Mutant[]> {
  if (round.length === 0) return [];
  const wrong = await filesWithErrors(copy, round);
  if (wrong.size === 0) return round;
  const left = round.filter(({ file }) => !wrong.has(file));
  if (left.length < round.length) return keepRound(copy, left);
  if (round.length === 1) return [];
  const half = Math.ceil(round.length / 2);
  return [...(await keepRound(copy, round.slice(0, half))), ...(await keepRound(copy, round.slice(half)))];
}

async function filesWithErrors(copy: PrivateCopy, round: readonly Mutant[]): Promise<Set<string>> {
  for (const mutant of round) copy.write(mutant.file, applyMutant(readFileSync(join(copy.root, mutant.file), 'utf8'), mutant));
  const output = await runCompiler(copy);
  for (const { file } of round) copy.restore(file);
  return new Set([...output.matchAll(/^(\S.*?)\(\d+,\d+\): error /gm)].map(([, file]) => file as string));
}

/** The sources alone, and what a fault leaves without a use is no error of type. */
const CONFIG = {
  extends: './tsconfig.json',
  compilerOptions: { noUnusedLocals: false, noUnusedParameters: false, incremental: true, tsBuildInfoFile: './mutate.tsbuildinfo' },
  include: ['src'],
};
const CONFIG_FILE = 'tsconfig.mutate.json';

function runCompiler({ root, write }: PrivateCopy): Promise<string> {
  write(CONFIG_FILE, JSON.stringify(CONFIG));
  return new Promise((resolve, reject) => {
    const compiler = join(root, 'node_modules/.bin/tsc');
    execFile(compiler, ['-p', CONFIG_FILE, '--pretty', 'false'], { cwd: root, maxBuffer: 1e9 }, (error, output) => {
      // It fails when there are errors of type; without any it could not run.
      if (error !== null && !output.includes('error ')) reject(error);
      else resolve(output);
    });
  });
}
