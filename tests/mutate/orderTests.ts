import type { Mutant, TestFile } from './types';

/** The test files that run a mutant, those likely to notice it first: of the same name, then of the same folder, then the quick ones. */
export function orderTests(mutant: Mutant, number: number, tests: readonly TestFile[]): TestFile[] {
  const distance = (test: TestFile): number => distanceBetween(mutant.file, test.path);
  return tests.filter(({ reached }) => reached.includes(number)).sort((a, b) => distance(a) - distance(b) || a.seconds - b.seconds);
}

function distanceBetween(source: string, test: string): number {
  if (nameOf(source) === nameOf(test)) return 0;
  return folderOf(source) === folderOf(test) ? 1 : 2;
}

const nameOf = (path: string): string => (path.split('/').at(-1) ?? '').split('.')[0] ?? '';

/** The folder below `src` or `tests`. */
const folderOf = (path: string): string => path.split('/')[1] ?? '';
