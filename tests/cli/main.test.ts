import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { EXAMPLES, parsePlan } from '../../src/plan';
import { createFolder, example, run } from './run';

const folder = createFolder();

describe('the command line', () => {
  it.each([
    ['nothing', [], 2],
    ['a command that is none', ['plan'], 2],
    ['a word of every object', ['constructor'], 2],
    ['check without a file', ['check'], 2],
    ['check with an option that is none', ['check', '--loud'], 2],
    ['help', ['help'], 0],
    ['--help', ['--help'], 0],
  ])('%s', async (_, args, code) => {
    const ran = await run(...args);
    expect(ran.code).toBe(code);
    expect(code === 0 ? ran.out : ran.error).toMatch(/rackway/i);
    expect(code === 0 ? ran.error : ran.out).toBe('');
  });

  it('help names every command, paper and example', async () => {
    const { out } = await run('help');
    for (const word of ['check', 'figures', 'draw', 'new', 'ansi-b', 'a3', ...EXAMPLES.map(({ name }) => name)])
      expect(out).toContain(word);
  });
});

describe('new', () => {
  it.each(EXAMPLES.map(({ name }) => name))('prints %s, which is a plan', async (name) => {
    const ran = await run('new', '--example', name);
    expect(ran).toEqual({ code: 0, out: readFileSync(example(name), 'utf8'), error: '' });
    expect(parsePlan(ran.out).ok).toBe(true);
  });

  it('writes to a file that is not there', async () => {
    const file = join(folder, 'fresh.rackway.json');
    expect(await run('new', '--example', 'school-corner', '--out', file)).toEqual({ code: 0, out: '', error: '' });
    expect(readFileSync(file, 'utf8')).toBe(readFileSync(example('school-corner'), 'utf8'));
  });

  it('leaves a file that is there as it is', async () => {
    const file = join(folder, 'work.rackway.json');
    writeFileSync(file, 'my work');
    const ran = await run('new', '--example', 'school-corner', '--out', file);
    expect(ran.code).toBe(2);
    expect(ran.error).toContain('there already');
    expect(readFileSync(file, 'utf8')).toBe('my work');
  });

  it.each([[['--example', 'none']], [[]], [['--example', '../../package']], [['--example', 'school-corner', 'file']]])(
    'refuses %j',
    async (args) => {
      const ran = await run('new', ...args);
      expect(ran).toMatchObject({ code: 2, out: '' });
    },
  );
});
