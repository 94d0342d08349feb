import { parseArgs } from 'node:util';

export interface Options {
  /** Folders or files whose code is mutated. */
  paths: string[];
  sample: number;
  seed: number;
  /** Only tests under these paths are run; all of them when empty. */
  tests: string[];
  /** Print the sample and run nothing. */
  list: boolean;
  /** Percent of mutants that each folder has to kill; below it the command fails. */
  least: number;
  /** Seconds that a mutant gets beyond three times what its tests take without it. */
  patience: number;
}

/** What is mutated when no path is named. */
const FOLDERS = ['src/geometry', 'src/scene', 'src/editor', 'src/rules', 'src/topics'];

export function parseOptions(args: readonly string[]): Options {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      sample: { type: 'string', default: '300' },
      seed: { type: 'string', default: '11' },
      tests: { type: 'string', multiple: true, default: [] },
      list: { type: 'boolean', default: false },
      least: { type: 'string', default: '0' },
      patience: { type: 'string', default: '30' },
    },
  });
  return {
    paths: (positionals.length > 0 ? positionals : FOLDERS).map(tidyPath),
    sample: parseCount('sample', values.sample),
    seed: parseCount('seed', values.seed),
    tests: values.tests.map(tidyPath),
    list: values.list,
    least: parseCount('least', values.least),
    patience: parseCount('patience', values.patience),
  };
}

/** `./src/scene/` and `src/scene` are the same place. */
const tidyPath = (path: string): string => path.replace(/^\.\//, '').replace(/\/+$/, '');

function parseCount(name: string, text: string): number {
  if (!/^\d+$/.test(text)) throw new Error(`--${name} takes a whole number, not “${text}”`);
  return Number(text);
}
