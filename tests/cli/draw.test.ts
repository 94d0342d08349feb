import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../src/cli/stampResolution';
import { createFolder, example, run } from './run';

const folder = createFolder();
const school = example('school-corner');

it('check sum of a chunk: that of the empty IEND chunk is AE 42 60 82 (PNG specification)', () => {
  expect(crc32(Buffer.from('IEND'))).toBe(0xae426082);
});

describe('draw', () => {
  it('an SVG as large as its paper', async () => {
    const out = join(folder, 'plan.svg');
    expect(await run('draw', school, '--out', out, '--paper', 'A3', '--scale', '1:50', '--units', 'metric')).toEqual({
      code: 0,
      out: '',
      error: '',
    });
    const svg = readFileSync(out, 'utf8');
    expect(svg).toContain('width="420mm" height="297mm"');
    expect(svg).toContain('1 : 50');
    expect(svg).toContain('Dimensions in millimetres');
  });

  it('a PNG of 200 dots an inch, set in the shipped typeface', async () => {
    const out = join(folder, 'plan.png');
    expect((await run('draw', school, '--out', out, '--paper', 'ansi-b')).code).toBe(0);
    const png = readFileSync(out);
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([3400, 2200]);
    expect(png.length).toBeGreaterThan(100_000);
    // 200 dots an inch are 7874 a metre; the unit 1 is the metre.
    const at = png.indexOf('pHYs');
    expect([png.readUInt32BE(at + 4), png.readUInt32BE(at + 8), png.readUInt8(at + 12)]).toEqual([7874, 7874, 1]);
    expect(png.readUInt32BE(at + 13)).toBe(crc32(png.subarray(at, at + 13)));
  });

  it('the same plan gives the same bytes', async () => {
    const [a, b] = [join(folder, 'a.svg'), join(folder, 'b.svg')];
    await run('draw', school, '--out', a);
    await run('draw', school, '--out', b);
    expect(readFileSync(a)).toEqual(readFileSync(b));
  });

  it.each([
    ['no file', [], /draw needs one plan file/],
    ['two files', [school, school], /draw needs one plan file/],
    ['no name for the picture', [school], /--out/],
    ['a picture of another kind', [school, '--out', 'plan.bmp'], /ends in \.svg or \.png/],
    ['a paper that is none', [school, '--out', 'x.svg', '--paper', 'B7'], /--paper is one of a4, a3, .*not 'B7'/],
    ['a scale that is none', [school, '--out', 'x.svg', '--scale', '2:1'], /--scale is a reduction/],
    ['units that are none', [school, '--out', 'x.svg', '--units', 'furlongs'], /--units is us or metric, not 'furlongs'/],
    ['an option that is none', [school, '--colour'], /--colour/],
    ['a plan that is none', ['package.json', '--out', 'x.svg'], /package\.json: not a Rackway plan/],
    [
      'a scale that does not fit',
      [school, '--out', join(folder, 'big.svg'), '--paper', 'A4', '--scale', '1:5', '--units', 'metric'],
      /does not fit A4 at 1 : 5; it does at 1 : \d+/,
    ],
    ['a folder that is not there', [school, '--out', join(folder, 'none/plan.svg')], /there is no such file or folder/],
  ])('refuses %s in one sentence', async (_, args, reason) => {
    const ran = await run('draw', ...args);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.error).toMatch(reason);
    expect(ran.error.trimEnd().split('\n')).toHaveLength(1);
    expect(existsSync('x.svg') || existsSync(join(folder, 'big.svg'))).toBe(false);
  });
});
