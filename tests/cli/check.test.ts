import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findingsReportSchema } from '../../src/cli/jsonFormat';
import { createLinePlan, renderPlanText } from '../../src/plan';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { findingWords } from '../../src/text';
import { CHECKS } from '../../src/topics/registry';
import { formatterFor } from '../../src/units';
import { examplePlan } from '../support/examplePlans';
import { createFolder, example, run } from './run';

const folder = createFolder();

function write(name: string, text: string | Buffer): string {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
}

/** A plan of which every check holds; where none does, the test says so. */
function clearPlan() {
  const plan = createLinePlan({ family: 'recirculating-hot-water', configuration: 'left-front', hand: 'left-to-right' });
  const open = runChecks(deriveScene(plan), CHECKS).filter(({ verdict }) => verdict !== 'clear');
  expect(open.map(({ id }) => id)).toEqual([]);
  return plan;
}

describe('exit codes', () => {
  it('0: everything holds', async () => {
    const ran = await run('check', write('clear.rackway.json', renderPlanText(clearPlan())));
    expect(ran).toMatchObject({ code: 0, error: '' });
    expect(ran.out).toMatch(/✓ clear +\d+ checks hold/);
    expect(ran.out).not.toMatch(/[■▲?] /);
  });

  it.each([
    ['stop', 'cafe-straight'],
    ['ask', 'hotel-heat-recovery'],
  ])('1: a %s', async (verdict, name) => {
    const ran = await run('check', example(name));
    expect(ran).toMatchObject({ code: 1, error: '' });
    expect(ran.out).toContain(verdict);
    expect(ran.out).toContain(`The plan as a whole: ${verdict}.`);
  });

  it('2 when any file cannot be read; the others are checked all the same', async () => {
    const ran = await run('check', 'nowhere.json', example('cafe-straight'));
    expect(ran.code).toBe(2);
    expect(ran.error).toBe('rackway: nowhere.json: there is no such file or folder\n');
    expect(ran.out).toContain('■ stop');
  });
});

describe('bad input is one sentence with the file, the place and the reason', () => {
  const plan = examplePlan('school-corner');
  const broken = (change: (raw: { room: object }) => void): string => {
    const raw = JSON.parse(renderPlanText(plan)) as { room: object };
    change(raw);
    return JSON.stringify(raw);
  };

  it.each([
    ['no JSON', '{"format": ', /line 1, column \d+/],
    ['another document', '{"format":"something-else"}', /not a Rackway plan/],
    ['a newer version', broken((raw) => Object.assign(raw, { version: 99 })), /version: the plan has version 99, newer/],
    ['an unknown key', broken((raw) => Object.assign(raw, { extra: 1 })), /extra: this key is not part of a plan/],
    ['a word for a number', broken((raw) => Object.assign(raw.room, { ceilingHeight: 'high' })), /room\.ceilingHeight: expected/],
    ['a key that would poison', '{"__proto__":{"x":1},"format":"rackway-plan","version":1}', /this word cannot be a key/],
    [
      'an infinite number',
      renderPlanText(plan).replace(/"ceilingHeight": [\d.]+/, '"ceilingHeight": 1e999'),
      /ceilingHeight: 1e999 is not a finite number/,
    ],
    ['not UTF-8', Buffer.from([0xff, 0xfe, 0x00, 0xd8]), /not text in UTF-8/],
    ['too large a file', Buffer.alloc(5_000_001, 0x20), /5000001 bytes/],
  ] as [string, string | Buffer, RegExp][])('%s', async (name, text, reason) => {
    const file = write(`${name.replaceAll(' ', '-')}.json`, text);
    const ran = await run('check', file);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.error.startsWith(`rackway: ${file}: `)).toBe(true);
    expect(ran.error).toMatch(reason);
    expect(ran.error.trimEnd().split('\n')).toHaveLength(1);
  });

  it('a folder', async () => expect((await run('check', folder)).error).toContain('this is a folder, not a plan file'));
});

describe('what people read', () => {
  it('worst first, each with its mark and word, figures, source and repair; what holds is folded into a count', async () => {
    const { out } = await run('check', example('cafe-straight'));
    const clear = runChecks(deriveScene(examplePlan('cafe-straight')), CHECKS).filter(({ verdict }) => verdict === 'clear').length;
    expect(out.match(/■ stop/g)).toHaveLength(5);
    expect(out).toContain(`✓ clear  ${clear} checks hold`);
    expect(out).toMatch(/Measured .+, to be at least .+\n/);
    expect(out).toContain('Repair: ');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
  });

  it.each([
    ['us', /″/, / mm/],
    ['metric', /\smm/, /″/],
  ] as const)('--units %s', async (units, has, hasNot) => {
    const { out } = await run('check', example('cafe-straight'), '--units', units);
    const said =
      out
        .split('\n')
        .filter((line) => line.includes('Measured'))
        .join('\n')
        .split('California')[0] ?? '';
    expect(said).toMatch(has);
    expect(said).not.toMatch(hasNot);
  });
});

describe('--json', () => {
  it.each(['school-corner', 'cafe-straight', 'care-home-direct-vent', 'hotel-heat-recovery'])(
    '%s: keeps to its schema, and to what the checks say',
    async (name) => {
      const ran = await run('check', example(name), '--json');
      const report = findingsReportSchema.parse(JSON.parse(ran.out));
      const findings = runChecks(deriveScene(examplePlan(name)), CHECKS);
      const [file] = report.files;
      expect(file?.file).toBe(example(name));
      expect(file?.findings.map(({ id, verdict, measured, limit, subjects }) => ({ id, verdict, measured, limit, subjects }))).toEqual(
        JSON.parse(
          JSON.stringify(findings.map(({ id, verdict, measured, limit, subjects }) => ({ id, verdict, measured, limit, subjects }))),
        ),
      );
      expect(new Set(file?.findings.map(({ id }) => id)).size).toBe(findings.length);
      expect(file?.findings[0]?.sentence).toBe(findings[0] && findingWords(findings[0], formatterFor(examplePlan(name).settings.units)));
    },
  );

  it('the form is the documented one', async () => {
    const { out } = await run('check', example('care-home-direct-vent'), '--json');
    const report = JSON.parse(out) as { format: string; version: number; files: { findings: object[] }[] };
    expect(Object.keys(report)).toEqual(['format', 'version', 'files']);
    expect([report.format, report.version]).toEqual(['rackway-findings', 1]);
    expect(Object.keys(report.files[0] ?? {})).toEqual(['file', 'title', 'verdict', 'findings']);
    expect(Object.keys(report.files[0]?.findings[0] ?? {})).toEqual([
      'id',
      'check',
      'part',
      'title',
      'verdict',
      'measured',
      'limit',
      'watchLimit',
      'margin',
      'unit',
      'relation',
      'subjects',
      'place',
      'source',
      'sentence',
      'ask',
      'message',
      'repairs',
    ]);
  });

  it('is the same for the same plan, and words alone follow --units', async () => {
    const [a, b] = [
      await run('check', example('cafe-straight'), '--json', '--units', 'us'),
      await run('check', example('cafe-straight'), '--json', '--units', 'metric'),
    ];
    const numbers = (text: string) =>
      findingsReportSchema
        .parse(JSON.parse(text))
        .files[0]?.findings.map(({ measured, limit, margin, place }) => ({ measured, limit, margin, place }));
    expect(numbers(a.out)).toEqual(numbers(b.out));
    expect(a.out).not.toBe(b.out);
    expect(a.out).toBe((await run('check', example('cafe-straight'), '--json', '--units', 'us')).out);
  });

  it('leaves out what could not be read', async () => {
    const ran = await run('check', 'nowhere.json', '--json');
    expect(ran.code).toBe(2);
    expect(JSON.parse(ran.out)).toEqual({ format: 'rackway-findings', version: 1, files: [] });
  });
});
