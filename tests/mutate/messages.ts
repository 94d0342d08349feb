import type { TestFile } from './types';

/** To see which mutants each test file runs, or to see whether one mutant is noticed. */
export type WorkerKind = 'reach' | 'judge';

/** What a worker is asked: to run test files in this order, with one source changed since it was read, or none. */
export interface Ask {
  changed: string | null;
  tests: string[];
}

export interface FileReport extends Omit<TestFile, 'reached'> {
  /** Null where nothing was recorded: what is judged is not watched, and a file may have no test that runs. */
  reached: readonly number[] | null;
  /** A test went over its own limit. */
  isSlow: boolean;
}

/** What a worker says: that it is ready, that a test file has ended, that all have, or why it could not run them. */
export type Message =
  | { kind: 'ready'; tests: string[] }
  | { kind: 'file'; report: FileReport }
  | { kind: 'done'; hasStrayErrors: boolean }
  | { kind: 'failure'; text: string };
