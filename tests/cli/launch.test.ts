import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createFolder, example } from './run';

/** The command as people start it, in a process of its own and from another folder. */
function launch(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [resolve('src/cli/launch.mjs'), ...args], {
    encoding: 'utf8',
    cwd: folder,
    timeout: 60_000,
  });
  return { code: status, out: stdout, error: stderr };
}

/** The same with a reader that takes the first of its output and hangs up, as `head` does. */
async function launchForFirst(...args: string[]) {
  const child = spawn(process.execPath, [resolve('src/cli/launch.mjs'), ...args], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
  let error = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    error += text;
  });
  child.stdout.once('data', () => child.stdout.destroy());
  const [code] = (await once(child, 'close')) as [number | null];
  return { code, error };
}

const folder = createFolder();

describe('the launched command', { timeout: 120_000 }, () => {
  it.each([
    ['2 without a command', [], 2],
    ['0 for help', ['help'], 0],
    ['1 for a plan with a stop', ['check', resolve(example('cafe-straight'))], 1],
    ['2 for what cannot be read', ['check', 'nowhere.json'], 2],
  ])('leaves with %s', (_, args, code) => expect(launch(...args).code).toBe(code));

  it.each([
    ['figures, with 0', ['figures', '--json', ...Array.from({ length: 4 }, () => resolve(example('school-corner')))], 0],
    ['a check, with what it found', ['check', '--json', ...Array.from({ length: 4 }, () => resolve(example('cafe-straight')))], 1],
    ['the manual, with 0', ['manual'], 0],
  ])('ends quietly when its reader hangs up: %s', async (_, args, code) => {
    expect(await launchForFirst(...args)).toEqual({ code, error: '' });
  });

  it('prints JSON and nothing else on its output', () => {
    const { out, error } = launch('check', resolve(example('school-corner')), '--json');
    expect(JSON.parse(out)).toMatchObject({ format: 'rackway-findings', version: 1 });
    expect(error).toBe('');
  });

  it('finds its examples, its typeface and its rasteriser from any folder', () => {
    expect(launch('new', '--example', 'hotel-heat-recovery', '--out', 'hotel.rackway.json')).toEqual({ code: 0, out: '', error: '' });
    expect(launch('draw', 'hotel.rackway.json', '--out', 'hotel.png')).toEqual({ code: 0, out: '', error: '' });
    expect(readFileSync(join(folder, 'hotel.png')).length).toBeGreaterThan(100_000);
  });
});
