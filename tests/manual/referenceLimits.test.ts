import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { createManual } from '../../src/manual';
import type { Limit } from '../../src/rules';
import { LIMITS } from '../../src/topics/registry';
import { formatterFor } from '../../src/units';

const SRC = join(import.meta.dirname, '../../src');
/** Where a plan is held against limits; the file of the limit itself and the door of its topic are no use of it. */
const FOLDERS = ['rules', 'topics', 'scene', 'drawing', 'sheets'];
const SOURCES = FOLDERS.flatMap((folder) =>
  readdirSync(join(SRC, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.endsWith('index.ts'))
    .map((name) => readFileSync(join(SRC, folder, name), 'utf8')),
);

const MODULES = import.meta.glob<Record<string, unknown>>('../../src/topics/*/formulas/**/*.ts', { eager: true });
const EXPORTS = Object.values(MODULES).flatMap((module) => Object.entries(module).filter(([name]) => name !== 'entries'));

/** Names by which the code can reach a limit: its own, or that of a list or table that holds it. */
const namesOf = (limit: Limit): string[] =>
  EXPORTS.flatMap(([name, value]) => {
    const holds = value === limit || (typeof value === 'object' && value !== null && Object.values(value).includes(limit));
    return holds ? [name] : [];
  });

const isUsed = (name: string): boolean =>
  SOURCES.some((text) => !new RegExp(`export const ${name}\\b`).test(text) && new RegExp(`\\b${name}\\b`).test(text));

/** Held as a yes or no, side by side: a table at the entry and one at the exit (`configuration-possible`). */
const HELD_WITHOUT_ITS_NAME = ['machine-boards'];

// A limit that a function alone hands out has no name to look for.
const named = LIMITS.map((limit) => ({ limit, names: namesOf(limit) })).filter(({ names }) => names.length > 0);

test('most limits have a name to look for', () => expect(named.length).toBeGreaterThan(0.8 * LIMITS.length));

test('a limit is for reference just when no check and no figure uses it', () => {
  const wrong = named.filter(
    ({ limit, names }) => (limit.isForReference === true) === (names.some(isUsed) || HELD_WITHOUT_ITS_NAME.includes(limit.id)),
  );
  expect(wrong.map(({ limit, names }) => `${limit.id} (${names.join(', ')})`)).toEqual([]);
});

test('the manual says which are for reference', () => {
  const entries = createManual(formatterFor('us'));
  const saysSo = entries.filter(
    ({ kind, parts }) => kind === 'limit' && parts.some((part) => part.kind === 'text' && part.text.startsWith('For reference')),
  );
  const flagged = LIMITS.filter(({ isForReference }) => isForReference === true).map(({ id }) => `limit/${id}`);
  expect(flagged.length).toBeGreaterThan(5);
  expect(saysSo.map(({ id }) => id).toSorted()).toEqual(flagged.toSorted());
});
