import { describe, expect, it, test } from 'vitest';
import { createManual, type ManualPart, renderManual, searchManual } from '../../src/manual';
import { SOURCES } from '../../src/rules';
import { CHECKS, FIGURES, FORMULAS, LIMITS, RULES } from '../../src/topics/registry';
import { formatterFor } from '../../src/units';
import { readFont } from '../support/readFont';

const entries = createManual(formatterFor('us'));
const metric = createManual(formatterFor('metric'));
const entry = (id: string, from = entries) => from.find((one) => one.id === id)!;

const words = (part: ManualPart): string[] =>
  part.kind === 'text' || part.kind === 'formula' ? [part.text] : part.kind === 'links' ? [part.title, ...part.to] : part.rows.flat();

/** What no reader should meet. */
const UNREADABLE = /undefined|NaN|\[object|\([ALW]-[A-Z]?\d|\b[ALW]-[A-Z]{1,3}\d/;

describe('it is made of the registries', () => {
  test.each([
    ['check', CHECKS.map(({ id }) => id)],
    ['figure', FIGURES.map(({ id }) => id)],
    ['formula', FORMULAS.map(({ record }) => record.id)],
    ['limit', LIMITS.map(({ id }) => id)],
    ['rule', RULES.map(({ id }) => id)],
    ['source', Object.keys(SOURCES)],
  ])('every %s has its entry, once', (kind, ids) => {
    const own = entries.filter((one) => one.kind === kind).map(({ id }) => id);
    expect(own.toSorted()).toEqual(ids.map((id) => `${kind}/${id}`).toSorted());
    expect(new Set(own).size).toBe(own.length);
  });

  it('every link leads to an entry', () => {
    const ids = new Set(entries.map(({ id }) => id));
    const to = entries.flatMap(({ parts }) => parts.flatMap((part) => (part.kind === 'links' ? part.to : [])));
    expect(to.length).toBeGreaterThan(50);
    expect(to.filter((id) => !ids.has(id))).toEqual([]);
  });

  it('every text is written out: no id of a fact, nothing undefined', () => {
    const texts = [...entries, ...metric].flatMap(({ id, title, parts }) => [title, ...parts.flatMap(words)].map((text) => ({ id, text })));
    const isWrong = (text: unknown) => typeof text !== 'string' || UNREADABLE.test(text);
    expect(texts.length).toBeGreaterThan(5000);
    expect(texts.filter(({ text }) => isWrong(text))).toEqual([]);
  });

  it('every letter and sign of it is in the typeface that ships', () => {
    const signs = new Set([...entries, ...metric].flatMap(({ title, parts }) => [...title, ...parts.flatMap(words).join('')]));
    const font = readFont('public/fonts/IBMPlexSans-Regular.ttf');
    expect(signs.size).toBeGreaterThan(80);
    expect([...signs].filter((sign) => font.advance(sign.codePointAt(0) ?? 0) === null)).toEqual([]);
  });
});

describe('an entry says what its registry knows', () => {
  it('a check: why, its limit in people’s units, its source', () => {
    const check = CHECKS.find(({ id }) => id === 'hood-overhang')!;
    const said = entry('check/hood-overhang').parts.flatMap(words).join(' ');
    expect(said).toContain(check.why);
    expect(said).toContain('at least 6″');
    expect(said).toContain('International Mechanical Code');
    expect(entry('check/hood-overhang', metric).parts.flatMap(words).join(' ')).toMatch(/at least 152(\.4)?\s?mm/);
  });

  it('what is held of a sink too, of which a new line has none', () => {
    const rows = entry('check/sink-waste').parts.flatMap((part) => (part.kind === 'table' ? part.rows : []));
    expect(rows.map((row) => row.slice(0, 2).map((text) => text.replaceAll(/[\u00a0\u202f]/g, ' ')))).toEqual([
      ['way', 'at most 15′ 0″'],
      ['direct', 'at most 4′ 0″'],
    ]);
    expect(entry('figure/sink-volume').parts.flatMap(words)).toContain('formula/sink-volume');
  });

  it('a formula: how it is written, its ranges, its sources with their confidence, its examples, and what it works out', () => {
    const { parts } = entry('formula/fan-operating-point');
    expect(parts.map(({ kind }) => kind)).toEqual(['formula', 'table', 'text', 'table', 'table', 'links']);
    expect(parts.flatMap(words)).toContain('the text itself');
    expect(parts.flatMap(words)).toContain('figure/fan-airflow');
  });

  it('a source: its edition, what was read of it, and what rests on it', () => {
    const said = entry('source/nspc').parts.flatMap(words);
    expect(said).toEqual(expect.arrayContaining(['2009, Appendix K', 'the appendix itself', 'formula/drain-flow', 'formula/least-slope']));
  });

  it('a figure names the formulas that it is worked out with, also where a plan must know more than most', () => {
    expect(entry('figure/heat-units').parts.flatMap(words)).toContain('formula/recorded-heat-units');
    expect(
      entry('figure/hood-exhaust')
        .parts.flatMap(words)
        .filter((word) => word.startsWith('formula/')).length,
    ).toBeGreaterThan(4);
  });
});

test.each([
  ['', entries.length],
  ['no such words anywhere', 0],
])('searching for “%s” finds %d', (query, count) => expect(searchManual(entries, query)).toHaveLength(count));

it('what is named so comes before what only speaks of it', () => {
  const found = searchManual(entries, 'Heat UNITS');
  expect(`${found[0]?.title} ${found[0]?.id}`).toMatch(/heat.units/i);
  expect(found.length).toBeGreaterThan(2);
});

describe('as Markdown', () => {
  const text = renderManual(entries);

  it('has a heading and an anchor for each entry, and every link has its anchor', () => {
    expect(text.match(/^#### /gm)).toHaveLength(entries.length);
    const anchors = new Set([...text.matchAll(/<a id="([^"]+)">/g)].map((found) => found[1]));
    expect([...text.matchAll(/\]\(#([^)]+)\)/g)].map((found) => found[1]).filter((to) => !anchors.has(to))).toEqual([]);
  });

  it('every table has as many cells in each row as in its head', () => {
    const cells = (line: string) => line.replaceAll('\\|', '').split('|').length;
    const lines = text.split('\n');
    const uneven = lines.filter(
      (line, i) => line.startsWith('|') && lines[i - 1]?.startsWith('|') && cells(line) !== cells(lines[i - 1] ?? ''),
    );
    expect(uneven).toEqual([]);
  });
});
