import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import * as engineering from '../../src/engineering';
import { createManual } from '../../src/manual';
import { formatterFor } from '../../src/units';

const SRC = join(import.meta.dirname, '../../src');
/** Where a plan is held against limits; in engineering the lists of an index and the file of the limit itself are no use of it. */
const FOLDERS = ['figures', 'services', 'checks', 'scene', 'sheets', 'engineering'];
const filesIn = (folder: string) =>
  readdirSync(join(SRC, folder), { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
const SOURCES = FOLDERS.flatMap((folder) =>
  filesIn(folder).map((name) => ({ folder, name, text: readFileSync(join(SRC, folder, name), 'utf8') })),
);

/** Lists of all limits of a subject: the manual's, and no use. */
const LISTS = /^([A-Z]+_)?LIMITS$/;
const isList = (name: string) => LISTS.test(name) && !['INSTRUMENT_LIMITS', 'SURROUNDING_LIMITS'].includes(name);

/** Names by which the code can reach a limit: its own, or that of a list or table that holds it. */
const namesOf = (limit: engineering.Limit): string[] =>
  Object.entries(engineering).flatMap(([name, value]) => {
    const holds = value === limit || (typeof value === 'object' && value !== null && Object.values(value).includes(limit));
    return holds && !isList(name) ? [name] : [];
  });

const isUsed = (name: string): boolean =>
  SOURCES.some(({ folder, name: file, text }) => {
    const isAtHome = folder === 'engineering' && (file.endsWith('index.ts') || new RegExp(`export const ${name}\\b`).test(text));
    return !isAtHome && new RegExp(`\\b${name}\\b`).test(text);
  });

/** Held as a yes or no, side by side: a table at the entry and one at the exit (`configuration-possible`). */
const HELD_WITHOUT_ITS_NAME = ['machine-boards'];

// A limit that a function alone hands out has no name to look for.
const named = engineering.LIMITS.map((limit) => ({ limit, names: namesOf(limit) })).filter(({ names }) => names.length > 0);

test('most limits have a name to look for', () => expect(named.length).toBeGreaterThan(0.8 * engineering.LIMITS.length));

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
  const flagged = engineering.LIMITS.filter(({ isForReference }) => isForReference === true).map(({ id }) => `limit/${id}`);
  expect(flagged.length).toBeGreaterThan(5);
  expect(saysSo.map(({ id }) => id).toSorted()).toEqual(flagged.toSorted());
});
