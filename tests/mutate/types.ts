/** One small fault put into a source: the text from `start` to `end` is replaced. */
export interface Mutant {
  /** Path from the top of the repository, with forward slashes. */
  file: string;
  line: number;
  start: number;
  end: number;
  replacement: string;
  /** What was done, as it is printed: `< → <=`. */
  operator: string;
  /** What a mark of being reached is put before: an expression, or a statement. */
  place: 'expression' | 'statement' | 'block';
}

/** `survived`: every test that reaches it passed. `unreached`: no test ran it. A hang and a crash of the process count as noticed. */
export type Outcome = 'killed' | 'timeout' | 'survived' | 'unreached';

export interface Result {
  mutant: Mutant;
  outcome: Outcome;
  /** The test file that failed first. */
  killer: string | null;
  seconds: number;
}

/** What the tests do without a mutant. */
export interface TestFile {
  path: string;
  /** Places in the list of mutants of those that it runs. */
  reached: readonly number[];
  passed: boolean;
  seconds: number;
}
