/**
 * One figure that must be reached. A file `tests/bench/NAME.bench.ts` exports one or more of these as `benchmarks`;
 * `npm run bench` prints what it measured beside the target.
 */
export interface Benchmark {
  name: string;
  unit: 'ms' | 'kB';
  /** What is to be reached, in its unit; at most. */
  target: number;
  /** Which number of the sample stands for it; the median unless told. `p95`: 95 % of the sample are no greater. */
  statistic?: 'median' | 'p95';
  /** Either one run of the work, which the runner times often, in ms… */
  run?: () => unknown;
  /** …or the sample itself, where the work is timed elsewhere: in a browser, in a process of its own. */
  sample?: () => Promise<number[]>;
}
