import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildCore } from './buildCore';

/** The script of the README, as it stands there. */
const script = /```js\n([^`]*from 'rackway'[^`]*)```/.exec(readFileSync('README.md', 'utf8'))?.[1] ?? '';

const FILE = `dist/readme-${process.pid}.mjs`;

function run(plan: string): string[] {
  writeFileSync(FILE, script);
  try {
    return execFileSync('node', [FILE, plan], { encoding: 'utf8' }).trimEnd().split('\n');
  } finally {
    rmSync(FILE, { force: true });
  }
}

describe('the script of the README', () => {
  beforeAll(buildCore, 60_000);

  it('is ten lines at most', () => {
    expect(script).not.toBe('');
    expect(script.trimEnd().split('\n').length).toBeLessThanOrEqual(10);
  });

  it('prints what stops', { timeout: 30_000 }, () => {
    const stops = run('public/examples/cafe-straight.rackway.json');
    expect(stops).toHaveLength(5);
    expect(stops[0]).toBe(
      'The order says right to left; the line runs left to right. Tables built to the order would not fit their sides.',
    );
    expect(stops[1]).toContain('is left between the soiled table and the machine; silicone seals');
  });

  it('prints nothing of a room without a stop', { timeout: 30_000 }, () => {
    expect(run('public/examples/school-corner.rackway.json')).toEqual(['']);
  });

  it('says why a file is no plan', { timeout: 30_000 }, () => {
    expect(() => run('package.json')).toThrow(/not a Rackway plan|format/);
  });
});
