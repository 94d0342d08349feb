import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** A folder in which adding one file adds one thing, and what must stand beside that file. */
interface Registry {
  /** What its files are, for the test's name. */
  of: string;
  folder: string;
  /** The file that lists them. */
  registry: string;
  /** The export that each file must have, where there is one name for all. */
  exports?: string;
  /** Where their tests are: a file of the same name, or a table that names the id. */
  tests: string;
  /** Whether each must have a test file of its own name. */
  ownTest: boolean;
}

const REGISTRIES: Registry[] = [
  {
    of: 'check',
    folder: 'src/checks/rules',
    registry: 'src/checks/registry.ts',
    exports: 'check',
    tests: 'tests/checks',
    ownTest: true,
  },
  {
    of: 'check of services',
    folder: 'src/services/rules',
    registry: 'src/services/registry.ts',
    exports: 'check',
    tests: 'tests/services',
    ownTest: true,
  },
  {
    of: 'figure',
    folder: 'src/figures/rules',
    registry: 'src/figures/registry.ts',
    exports: 'rule',
    tests: 'tests/figures',
    ownTest: true,
  },
  {
    of: 'machine family',
    folder: 'src/catalog/families',
    registry: 'src/catalog/families/index.ts',
    exports: 'sheet',
    tests: 'tests/catalog',
    ownTest: false,
  },
];

describe.each(REGISTRIES)('a $of', ({ folder, registry, exports, tests, ownTest }) => {
  const ids = idsIn(folder);

  it('has a file of its own, and there is one at least', () => expect(ids).not.toEqual([]));

  it('is in the registry', () => {
    expect(ids.filter((id) => !importsOf(registry).includes(id))).toEqual([]);
  });

  it('has its export', () => {
    const without = (id: string) => exports !== undefined && !new RegExp(`export const ${exports}\\b`).test(read(folder, id));
    expect(ids.filter(without)).toEqual([]);
  });

  it('has its test', () => {
    const table = ownTest ? '' : allText(tests);
    expect(ids.filter((id) => !existsSync(join(tests, `${id}.test.ts`)) && !table.includes(id))).toEqual([]);
  });
});

/** What a check must say of itself before it measures anything. */
interface CheckFacts {
  id: string;
  title: string;
  why: string;
  source: Record<string, unknown>;
}

describe('the facts of each check', async () => {
  const files = import.meta.glob<{ check: CheckFacts }>('../../src/checks/rules/*.ts', { eager: true });
  const rows = Object.entries(files).map(([path, module]) => ({ id: idOf(path), check: module.check }));
  const { CHECKS } = await import('../../src/checks/index.ts');

  it('lists each once, and nothing from elsewhere', () => {
    expect(CHECKS.map((check) => check.id).sort()).toEqual(rows.map((row) => row.id).sort());
  });

  it.each(rows)('$id: its file, id, title, reason and source', ({ id, check }) => {
    expect(check.id).toBe(id);
    expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
    const sourceWords = Object.values(check.source);
    expect([check.title, check.why, ...sourceWords].every((text) => typeof text === 'string' && text.trim() !== '')).toBe(true);
    expect(sourceWords.length).toBeGreaterThan(1);
  });
});

/** What a figure must say of itself before it is derived. */
interface FigureFacts {
  id: string;
  title: string;
}

describe('the facts of each figure', async () => {
  const files = import.meta.glob<{ rule: FigureFacts }>('../../src/figures/rules/*.ts', { eager: true });
  const rows = Object.entries(files).map(([path, module]) => ({ id: idOf(path), rule: module.rule }));
  const { FIGURES, FIGURE_GROUPS } = await import('../../src/figures/index.ts');

  it('lists each once, and nothing from elsewhere', () => {
    expect(FIGURES.map((rule) => rule.id).sort()).toEqual(rows.map((row) => row.id).sort());
  });

  it('group after group, in the order of the groups', () => {
    const places = FIGURES.map(({ group }) => FIGURE_GROUPS.indexOf(group));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it.each(rows)('$id: its file, id and title', ({ id, rule }) => {
    expect(rule.id).toBe(id);
    expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
    expect(rule.title.trim()).not.toBe('');
  });
});

function idsIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => /\.tsx?$/.test(name) && name !== 'index.ts')
    .map(idOf);
}

function idOf(path: string): string {
  return path.replace(/^.*\//, '').replace(/\.tsx?$/, '');
}

/** Last parts of what a file imports or exports again. */
function importsOf(path: string): string[] {
  return [...readFileSync(path, 'utf8').matchAll(/from '(\.[^']+)'/g)].map((match) => idOf(match[1] ?? ''));
}

function read(folder: string, id: string): string {
  return readFileSync(join(folder, `${id}.ts`), 'utf8');
}

function allText(folder: string): string {
  if (!existsSync(folder)) return '';
  const names = readdirSync(folder, { recursive: true }).map(String);
  return names
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n');
}
