import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { SOURCES } from '../../src/rules';

const SRC = join(import.meta.dirname, '../../src');
const text = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.startsWith(join('rules', 'sources')))
  .map((name) => readFileSync(join(SRC, name), 'utf8'))
  .join('\n');

test.each(Object.entries(SOURCES))('%s: a permanent key, a title, what was read, and something that rests on it', (key, document) => {
  expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  expect([document.title, document.read].every((words) => words.trim() !== '')).toBe(true);
  expect(document.edition?.trim()).not.toBe('');
  expect(text).toContain(`'${key}'`);
});

test('no two documents have one title and edition', () => {
  const names = Object.values(SOURCES).map(({ title, edition }) => `${title}, ${edition}`);
  expect(new Set(names).size).toBe(names.length);
});
