import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/catalog/index.ts';
import { type Entries, type EntryRow, FIGURE_GROUPS } from '../../src/rules/index.ts';
import { CHECKS, FIGURES, FORMULAS, LIMITS, RULES } from '../../src/topics/registry/index.ts';
import { TOPICS } from './layers.ts';

/** What a check must say of itself before it measures anything. */
interface CheckFacts {
  id: string;
  order: number;
  title: string;
  why: string;
  source: Record<string, unknown>;
}

/** What a figure must say of itself before it is derived. */
interface FigureFacts {
  id: string;
  order: number;
  title: string;
}

const KEBAB = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

describe('the topics', () => {
  it('are those of the table', () => expect(readdirSync('src/topics').toSorted()).toEqual([...TOPICS].toSorted()));
});

describe('each check', () => {
  const files = import.meta.glob<{ check: CheckFacts }>('../../src/topics/*/checks/*.ts', { eager: true });
  const rows = Object.entries(files).map(([path, module]) => ({ id: idOf(path), path, check: module.check }));

  it('is a file, and there is one at least', () => expect(rows).not.toEqual([]));

  it('is in the registry once, in its place, and nothing from elsewhere', () => {
    expect(CHECKS.map(({ id }) => id)).toEqual(inPlace(rows.map(({ check }) => check)));
  });

  it('has a place of its own', () => expect(sharedPlaces(CHECKS)).toEqual([]));

  it.each(rows)('$id: its file, id, title, reason, source and test', ({ id, path, check }) => {
    expect(check.id).toBe(id);
    expect(id).toMatch(KEBAB);
    const sourceWords = Object.values(check.source);
    expect([check.title, check.why, ...sourceWords].every((text) => typeof text === 'string' && text.trim() !== '')).toBe(true);
    expect(sourceWords.length).toBeGreaterThan(1);
    expect(existsSync(testOf(path))).toBe(true);
  });
});

describe('each figure', () => {
  const files = import.meta.glob<{ rule: FigureFacts }>('../../src/topics/*/figures/*.ts', { eager: true });
  const rows = Object.entries(files).map(([path, module]) => ({ id: idOf(path), path, rule: module.rule }));

  it('is a file, and there is one at least', () => expect(rows).not.toEqual([]));

  it('is in the registry once, in its place, and nothing from elsewhere', () => {
    expect(FIGURES.map(({ id }) => id)).toEqual(inPlace(rows.map(({ rule }) => rule)));
  });

  it('has a place of its own', () => expect(sharedPlaces(FIGURES)).toEqual([]));

  it('stands with its group, in the order of the groups', () => {
    const places = FIGURES.map(({ group }) => FIGURE_GROUPS.indexOf(group));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it.each(rows)('$id: its file, id, title and test', ({ id, path, rule }) => {
    expect(rule.id).toBe(id);
    expect(id).toMatch(KEBAB);
    expect(rule.title.trim()).not.toBe('');
    expect(existsSync(testOf(path))).toBe(true);
  });
});

describe('each file of formulas', () => {
  const files = import.meta.glob<{ entries?: Entries }>('../../src/topics/*/formulas/*.ts', { eager: true });
  const rows = Object.entries(files).map(([path, { entries = [] }]) => ({ path, entries }));
  const all = rows.flatMap(({ entries }) => entries);

  it('is there', () => expect(rows).not.toEqual([]));

  it.each(rows)('$path has something for the manual; what only helps others stands in support', ({ entries }) => {
    expect(entries.flatMap(itemsOf)).not.toEqual([]);
  });

  it.each([
    ['formulas', FORMULAS],
    ['limits', LIMITS],
    ['rules', RULES],
  ] as const)('gives its %s to the registry, each in a place of its own', (kind, listed) => {
    const some = all.filter((row) => (row[kind] ?? []).length > 0);
    expect(sharedPlaces(some)).toEqual([]);
    expect(listed).toHaveLength(some.reduce((sum, row) => sum + (row[kind] ?? []).length, 0));
  });
});

describe('what rules say', () => {
  const spoken = Object.values(
    import.meta.glob<string>('../../src/text/en/**/*.ts', { eager: true, query: '?raw', import: 'default' }),
  ).join('\n');
  const rules = import.meta.glob<string>('../../src/topics/*/{checks,figures}/**/*.ts', { eager: true, query: '?raw', import: 'default' });
  const lists = Object.entries(rules).flatMap(([path, text]) =>
    [...text.matchAll(/export interface (\w+Messages)\b/g)].map(([, name = '']) => ({ path, name })),
  );

  it('is listed beside each rule', () => expect(lists.length).toBeGreaterThan(100));

  // A list that no table of words names would be silent until somebody speaks it.
  it('has its words in a table of src/text/en', () => {
    expect(lists.filter(({ name }) => !new RegExp(`\\b${name}\\b`).test(spoken))).toEqual([]);
  });
});

describe('each machine family', () => {
  const folder = 'src/catalog/families';
  const ids = idsIn(folder);

  it('has a file of its own, and there is one at least', () => expect(ids).not.toEqual([]));

  it('is in the catalog by being there, under the name of its file', () => {
    expect(FAMILIES.map(({ id }) => id).toSorted()).toEqual(ids.toSorted());
  });

  it('has its export', () => {
    expect(ids.filter((id) => !/export const sheet\b/.test(readFileSync(join(folder, `${id}.ts`), 'utf8')))).toEqual([]);
  });

  it('has its test', () => {
    const text = allText('tests/catalog');
    expect(ids.filter((id) => !existsSync(`tests/catalog/${id}.test.ts`) && !text.includes(id))).toEqual([]);
  });
});

const inPlace = (facts: readonly { id: string; order: number }[]) => facts.toSorted((a, b) => a.order - b.order).map(({ id }) => id);

/** Places that two things claim. */
const sharedPlaces = (things: readonly { order: number }[]) =>
  things.map(({ order }) => order).filter((order, i, orders) => orders.indexOf(order) !== i);

const itemsOf = ({ formulas = [], limits = [], rules = [] }: EntryRow) => [...formulas, ...limits, ...rules];

/** The test of a rule: the same topic, folder and name. */
const testOf = (path: string) => path.replace('../../src/', 'tests/').replace(/\.ts$/, '.test.ts');

function idsIn(folder: string): string[] {
  return readdirSync(folder)
    .filter((name) => /\.tsx?$/.test(name) && name !== 'index.ts')
    .map(idOf);
}

function idOf(path: string): string {
  return path.replace(/^.*\//, '').replace(/\.tsx?$/, '');
}

function allText(folder: string): string {
  const names = readdirSync(folder, { recursive: true }).map(String);
  return names
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n');
}
