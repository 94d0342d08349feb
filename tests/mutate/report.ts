import type { Mutant, Outcome, Result } from './types';

export const formatMutant = ({ file, line, operator }: Mutant): string => `${file}:${line} ${operator}`;

const WORDS: Record<Outcome, string> = {
  killed: 'killed',
  timeout: 'timeout',
  survived: 'survived',
  unreached: 'survived, no test runs it',
};

export function formatResult({ mutant, outcome, killer, seconds }: Result): string {
  const by = killer === null ? '' : ` by ${killer}`;
  return `${formatMutant(mutant)} → ${WORDS[outcome]}${by} (${seconds.toFixed(1)} s)`;
}

/** One line a folder of `src`, and one for all. */
export function formatScores(results: readonly Result[]): string {
  return [...divideByFolder(results).map(([folder, own]) => formatScore(folder, own)), formatScore('all', results)].join('\n');
}

export function formatSurvivors(results: readonly Result[]): string {
  const left = results.filter((result) => !isNoticed(result)).sort((a, b) => compare(a.mutant, b.mutant));
  return left.length === 0 ? 'None survived.' : ['Survivors:', ...left.map(formatLine)].join('\n');
}

/** Whether a folder kills fewer percent than it has to. */
export const isBelow = (results: readonly Result[], least: number): boolean =>
  divideByFolder(results).some(([, own]) => percentOf(own) < least);

/** A mutant that makes a test hang is noticed as well. */
const isNoticed = ({ outcome }: Result): boolean => outcome === 'killed' || outcome === 'timeout';

const countNoticed = (results: readonly Result[]): number => results.filter(isNoticed).length;

const percentOf = (results: readonly Result[]): number => (100 * countNoticed(results)) / results.length;

function formatScore(name: string, results: readonly Result[]): string {
  const timeouts = results.filter(({ outcome }) => outcome === 'timeout').length;
  const note = timeouts === 0 ? '' : `, ${timeouts} of them by a timeout`;
  return `${name}: ${countNoticed(results)} of ${results.length} killed (${percentOf(results).toFixed(1)} %)${note}`;
}

const formatLine = ({ mutant, outcome }: Result): string =>
  outcome === 'unreached' ? `${formatMutant(mutant)} (no test runs it)` : formatMutant(mutant);

function divideByFolder(results: readonly Result[]): [string, Result[]][] {
  const folders = new Map<string, Result[]>();
  for (const result of results) {
    const folder = folderOf(result.mutant.file);
    folders.set(folder, [...(folders.get(folder) ?? []), result]);
  }
  return [...folders].sort(([a], [b]) => (a < b ? -1 : 1));
}

/** Two folders deep: `src/scene`; a file that lies higher counts to the folder it is in. */
const folderOf = (file: string): string => file.split('/').slice(0, -1).slice(0, 2).join('/');

const compare = (a: Mutant, b: Mutant): number => (a.file === b.file ? a.start - b.start : a.file < b.file ? -1 : 1);
