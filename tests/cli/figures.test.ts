import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { figuresReportSchema } from '../../src/cli/figuresFormat';
import { renderFigures } from '../../src/cli/renderFigures';
import { createPlan, EXAMPLES, renderPlanText } from '../../src/plan';
import { createRefusal, deriveFigures, type Figure, type Message } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { askWords, notesWords, refusalSentence, setLanguage } from '../../src/text';
import { EN } from '../../src/text/en';
import { FIGURES } from '../../src/topics/registry';
import { formatterFor } from '../../src/units';
import { examplePlan } from '../support/examplePlans';
import { tellFigure } from '../support/tellFigure';
import { createFolder, example, run } from './run';

const names = EXAMPLES.map(({ name }) => name);

describe('exit codes', () => {
  it.each(names)('0: %s, whatever is missing of it', async (name) => {
    expect(await run('figures', example(name))).toMatchObject({ code: 0, error: '' });
  });

  it('2 when any file cannot be read; the others are computed all the same', async () => {
    const ran = await run('figures', 'nowhere.json', example('school-corner'));
    expect(ran.code).toBe(2);
    expect(ran.error).toBe('rackway: nowhere.json: there is no such file or folder\n');
    expect(ran.out).toContain(example('school-corner'));
  });

  it.each([[[]], [['x.json', '--units', 'ells']], [['x.json', '--loud']]])('2: figures %s', async (args) => {
    const ran = await run('figures', ...args);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.error).toMatch(/^rackway: .+\n$/);
  });
});

describe('--json', () => {
  it.each(names)('%s: keeps to its schema, and to what the figures say', async (name) => {
    const { out } = await run('figures', example(name), '--json');
    const report = figuresReportSchema.parse(JSON.parse(out));
    const figures = deriveFigures(deriveScene(examplePlan(name)), FIGURES);
    expect(figures.length).toBeGreaterThan(0);
    expect(report.files.map(({ file }) => file)).toEqual([example(name)]);
    expect(report.files[0]?.figures).toEqual(JSON.parse(JSON.stringify(figures.map(tellInJson))));
    expect(new Set(figures.map(({ id }) => id)).size).toBe(figures.length);
  });

  it('the form is the documented one', async () => {
    const { out } = await run('figures', example('school-corner'), '--json');
    const report = JSON.parse(out) as { format: string; version: number; files: { figures: object[] }[] };
    expect(Object.keys(report)).toEqual(['format', 'version', 'files']);
    expect([report.format, report.version]).toEqual(['rackway-figures', 1]);
    expect(Object.keys(report.files[0] ?? {})).toEqual(['file', 'title', 'figures']);
    expect(Object.keys(report.files[0]?.figures[0] ?? {}).sort()).toEqual(
      ['id', 'figure', 'part', 'title', 'group', 'unit', 'subjects', 'value', 'ask', 'refusal', 'note', 'messages', 'how'].sort(),
    );
  });

  it('is SI whatever --units says', async () => {
    const inUnits = async (units: string) => (await run('figures', example('school-corner'), '--json', '--units', units)).out;
    expect(await inUnits('us')).toBe(await inUnits('metric'));
  });

  it('leaves out what could not be read', async () => {
    const ran = await run('figures', 'nowhere.json', '--json');
    expect(ran.code).toBe(2);
    expect(JSON.parse(ran.out)).toEqual({ format: 'rackway-figures', version: 1, files: [] });
  });
});

const SI = formatterFor('metric');

const omitNotes = ({ notes: _notes, ...others }: Record<string, unknown>) => others;

/** A refusal is written as its sentence in SI, and a source as its line. */
const tellInJson = (figure: Figure) => ({
  ...omitNotes(tellFigure(figure)),
  ask: figure.ask && { ...figure.ask, input: askWords(figure.ask, SI) },
  refusal: figure.refusal && refusalSentence(figure.refusal),
  note: notesWords(figure, SI),
  messages: figure.notes,
  how: figure.how && { ...figure.how, source: figure.how.source.map(({ text, confidence }) => ({ text, confidence })) },
});

describe('what people read', () => {
  /** Words as they come. */
  const noted = (words: string): Message => ({ key: 'test/words', params: { words } });
  beforeAll(() => setLanguage({ ...EN, 'test/words': ({ words }: { words: string }) => words }));
  afterAll(() => setLanguage(EN));

  const figure = (change: Partial<Figure>): Figure => ({
    id: 'x',
    figure: 'x',
    part: null,
    title: 'Thing',
    group: 'air',
    unit: 'm3/s',
    subjects: ['hood'],
    notes: [],
    value: 0.18877895,
    ask: null,
    refusal: null,
    how: null,
    ...change,
  });
  const scene = deriveScene(createPlan());
  const render = (figures: Figure[], units: 'us' | 'metric' = 'us', width = 100) =>
    renderFigures('a.json', scene, figures, units, width).replaceAll(/[\u00a0\u202f]/g, ' ');

  it('groups, each figure with its value in people’s units, its subject and its note', () => {
    const text = render([
      figure({ group: 'people', title: 'Way', unit: 'm', value: 3.048, notes: [noted('To the shelf.')] }),
      figure({ part: 'per foot' }),
    ]);
    expect(text.split('\n').slice(1, 8)).toEqual([
      '',
      'air',
      '  Thing, per foot  400 cfm  hood',
      '',
      'people',
      '  Way               10′ 0″  hood',
      '    To the shelf.',
    ]);
  });

  it.each([
    ['us', '400 cfm'],
    ['metric', '189 L/s'],
  ] as const)('--units %s', (units, words) => expect(render([figure({})], units)).toContain(words));

  it('a missing input is named, and nothing is claimed', () => {
    expect(render([figure({ value: null, ask: { input: noted('lip of the hood'), path: [] } })])).toMatch(
      /^ {2}Thing {2}\? {2}hood\n {4}Missing: lip of the hood\.$/m,
    );
  });

  it('a formula that does not hold says why', () => {
    expect(render([figure({ value: null, refusal: createRefusal({ id: 'x', title: 'X' }, 'no-machine', {}) })])).toMatch(
      /^ {2}Thing {2}— {2}hood\n {4}there is no machine$/m,
    );
  });

  it.each([60, 100])('keeps to a width of %d', (width) => {
    const notes = [noted('a long note that goes over more than one line, because there is much to say of it and little room')];
    const lines = render([figure({ notes }), figure({ title: 'A title of some length', notes })], 'us', width).split('\n');
    expect(Math.max(...lines.slice(0, -3).map((line) => line.length))).toBeLessThanOrEqual(width);
  });

  it('an empty plan is said to be one, or asks', async () => {
    const file = join(createFolder(), 'empty.rackway.json');
    writeFileSync(file, renderPlanText(createPlan()));
    expect(await run('figures', file)).toMatchObject({ code: 0, error: '' });
    expect(render([])).toContain('Nothing can be computed yet.');
  });
});
