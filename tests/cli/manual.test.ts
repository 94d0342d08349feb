import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { createManual, renderManual } from '../../src/manual';
import { formatterFor } from '../../src/units';
import { createFolder, run } from './run';

it.each([
  [[], 'us'],
  [['--units', 'us'], 'us'],
  [['--units', 'metric'], 'metric'],
] as const)('manual %j prints it in those units', async (args, units) => {
  expect(await run('manual', ...args)).toEqual({ code: 0, out: renderManual(createManual(formatterFor(units))), error: '' });
});

it('--out writes it, and never over a file that is there', async () => {
  const file = join(createFolder(), 'manual.md');
  expect(await run('manual', '--out', file)).toEqual({ code: 0, out: '', error: '' });
  expect(readFileSync(file, 'utf8')).toMatch(/^# Rackway: manual\n/);
  writeFileSync(file, 'mine');
  expect(await run('manual', '--out', file)).toMatchObject({ code: 2, out: '' });
  expect(readFileSync(file, 'utf8')).toBe('mine');
});

it.each([[['x.json']], [['--units', 'ells']], [['--loud']]])('2: manual %j', async (args) => {
  const ran = await run('manual', ...args);
  expect(ran).toMatchObject({ code: 2, out: '' });
  expect(ran.error).toMatch(/^rackway: .+\n$/);
});
