import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

/** A repository of one source, of which one bound is never tried and two functions are never run. */
const FILES = {
  'src/toy/clamp.ts': [
    'export const clamp = (a: number, most: number): number => (a > most ? most : a);',
    'export const isFive = (a: number): boolean => a === 5;',
    'export function readTwo(): number { return 2; }',
    '',
  ].join('\n'),
  'tests/toy/clamp.test.ts': [
    "import { expect, test } from 'vitest';",
    "import { clamp } from '../../src/toy/clamp';",
    "test('clamp', () => expect([clamp(1, 2), clamp(5, 2)]).toEqual([1, 2]));",
    '',
  ].join('\n'),
  'tests/toy/broken.test.ts': [
    "import { expect, test } from 'vitest';",
    "import { clamp } from '../../src/toy/clamp';",
    "test('clamp', () => expect(clamp(1, 2)).toBe(2));",
    '',
  ].join('\n'),
  'vite.config.ts':
    "export default { test: { projects: [{ test: { name: 'unit', include: ['tests/**/*.test.ts'], isolate: false } }] } };\n",
  'tsconfig.json': JSON.stringify({
    compilerOptions: { strict: true, noEmit: true, module: 'ESNext', moduleResolution: 'bundler', types: [] },
    include: ['src'],
  }),
};

let top: string;

beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'toy-'));
  for (const folder of ['src/toy', 'tests/toy']) mkdirSync(join(top, folder), { recursive: true });
  for (const [file, text] of Object.entries(FILES)) writeFileSync(join(top, file), text);
  symlinkSync(resolve('node_modules'), join(top, 'node_modules'));
});

afterEach(() => rmSync(top, { recursive: true }));

const run = (...args: string[]): Promise<{ code: number; output: string; errors: string }> =>
  new Promise((done) => {
    const child = execFile(process.execPath, [resolve('tests/mutate/run.mjs'), ...args], { cwd: top }, (_error, output, errors) =>
      done({ code: child.exitCode ?? -1, output, errors }),
    );
  });

test('mutants of a toy are told apart and its source is left as it was', { timeout: 300_000 }, async () => {
  const { code, output, errors } = await run('src/toy', '--least', '90');
  const lines = output.split('\n').map((line) => line.replace(/ \([\d.]+ s\)$/, ''));
  expect(errors).toBe('');
  expect(lines).toEqual(
    expect.arrayContaining([
      'Left out, for they fail without a mutant: tests/toy/broken.test.ts',
      'src/toy/clamp.ts:1 branches swapped → killed by tests/toy/clamp.test.ts',
      'src/toy/clamp.ts:1 > → >= → survived',
      'src/toy/clamp.ts:2 === → !== → survived, no test runs it',
      'src/toy/clamp.ts:2 5 → 6 → survived, no test runs it',
    ]),
  );
  // Emptied, it would return nothing.
  expect(output).not.toContain('block emptied');
  expect(output).toContain('src/toy: 1 of 5 killed (20.0 %)');
  expect(code).toBe(1);
  expect(readFileSync(join(top, 'src/toy/clamp.ts'), 'utf8')).toBe(FILES['src/toy/clamp.ts']);
});

test('what can not be run is refused', { timeout: 60_000 }, async () => {
  expect(await run('src/nowhere')).toEqual({ code: 2, output: '', errors: 'there is no src/nowhere\n' });
  expect(await run('src/toy', '--sample', 'many')).toMatchObject({ code: 2, errors: '--sample takes a whole number, not “many”\n' });
});
