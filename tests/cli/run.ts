import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { main } from '../../src/cli/main';

export interface Ran {
  code: number;
  out: string;
  error: string;
}

/** Runs a command line in this process and gives what it wrote. */
export async function run(...args: string[]): Promise<Ran> {
  const ran = { code: 0, out: '', error: '' };
  ran.code = await main(args, {
    out: (text) => {
      ran.out += text;
    },
    error: (text) => {
      ran.error += text;
    },
    columns: 100,
  });
  return ran;
}

/** A folder of its own for what a test writes. */
export const createFolder = () => mkdtempSync(join(tmpdir(), 'rackway-test-'));

export const example = (name: string) => `public/examples/${name}.rackway.json`;
